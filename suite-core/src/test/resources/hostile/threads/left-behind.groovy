Thread.startDaemon('left behind') { sleep 600_000 }
