/* rinses only /* no act here */ new File('marker').createNewFile() /* */
