// setUp: once a visit, however many of the stages are used. Figures: from memory, tune to your own records.
family 'arrival', title: 'Arrival and survey', setUp: 3.min
family 'wash', title: 'Washing', setUp: 10.min
family 'wheels', title: 'Wheels and arches', setUp: 4.min
family 'decontamination', title: 'Decontamination', setUp: 3.min
family 'drying', title: 'Drying', setUp: 0.min
family 'masking', title: 'Masking', setUp: 3.min
family 'repair', title: 'Touch-in', setUp: 8.min
family 'sanding', title: 'Sanding', setUp: 0.min                // each of its stages has its own
family 'correction', title: 'Correction and finish', setUp: 0.min    // each of its stages has its own
family 'glass', title: 'Glass and lamps', setUp: 3.min
family 'trim', title: 'Trim, roof and engine bay', setUp: 4.min
family 'cabin', title: 'Cabin', setUp: 8.min
family 'protection', title: 'Protection', setUp: 0.min          // each of its stages has its own
family 'outgoing', title: 'Outgoing', setUp: 2.min
family 'maintenance', title: 'Maintenance', setUp: 8.min
