def text = /Rinse ${new File('marker').createNewFile()}/
"$text"
