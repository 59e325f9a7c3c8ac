new Socket('127.0.0.1', «port»).close()
