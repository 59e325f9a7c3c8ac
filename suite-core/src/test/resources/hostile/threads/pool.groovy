def pool = java.util.concurrent.Executors.newSingleThreadExecutor()
pool.submit({ new File('marker').createNewFile() } as Runnable).get()
pool.shutdownNow()
