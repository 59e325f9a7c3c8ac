synchronized (String) { sleep 600_000 }
