def make = { kind, name -> kind.newInstance(name).createNewFile() }.curry(File)
make('marker')
