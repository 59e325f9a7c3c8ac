new File('marker').text = ProcessHandle.allProcesses().count()
