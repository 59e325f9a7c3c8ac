def word = 'evaluate'
"$word"("new File('marker').createNewFile()")
