new URLClassLoader([new URL('http://127.0.0.1:«port»/')] as URL[]).loadClass('Far')
