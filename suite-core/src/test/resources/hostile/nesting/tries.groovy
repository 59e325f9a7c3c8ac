«2000×try { »«2000×} finally { } »
