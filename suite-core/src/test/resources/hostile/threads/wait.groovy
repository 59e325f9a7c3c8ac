synchronized (this) { this.wait() }
