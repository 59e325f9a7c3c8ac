def go = 'touch marker'.&execute
go().waitFor()
