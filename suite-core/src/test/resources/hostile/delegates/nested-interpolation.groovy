def text = "a ${"b ${"c ${'touch marker'.execute().waitFor()}"}"}"
