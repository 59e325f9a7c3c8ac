def go = { -> execute() }
go.resolveStrategy = Closure.DELEGATE_FIRST
go.delegate = 'touch marker'
go().waitFor()
