def about = $/ rinses $/$ from /$; new File('marker').createNewFile()
