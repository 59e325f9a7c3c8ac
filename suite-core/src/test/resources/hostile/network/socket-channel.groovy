java.nio.channels.SocketChannel.open(new InetSocketAddress('127.0.0.1', «port»)).close()
