def make = File::new
make('marker').createNewFile()
