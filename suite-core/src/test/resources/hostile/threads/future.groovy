java.util.concurrent.CompletableFuture.runAsync { new File('marker').createNewFile() }.get()
