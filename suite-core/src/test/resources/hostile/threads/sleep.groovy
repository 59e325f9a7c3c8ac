sleep 600_000
