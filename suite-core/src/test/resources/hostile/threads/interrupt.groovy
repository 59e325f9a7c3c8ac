while (true) { try { sleep 600_000 } catch (Throwable ignored) { } }
