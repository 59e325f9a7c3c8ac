File make() { ['marker'] }
make().createNewFile()
