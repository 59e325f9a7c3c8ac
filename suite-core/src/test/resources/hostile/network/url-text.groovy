'http://127.0.0.1:«port»/'.toURL().text
