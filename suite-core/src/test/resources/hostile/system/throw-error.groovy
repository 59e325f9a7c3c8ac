throw new ThreadDeath()
