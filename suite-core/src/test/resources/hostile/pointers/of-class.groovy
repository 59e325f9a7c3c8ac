def quit = System.&exit
quit(3)
