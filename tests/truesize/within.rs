//! The sheets of the demos, as they are published: the same measurements.

use super::{measured, paths, tagged, write};
use crate::support::{demos, editions_at};
use trimwright::design::variants::Page;
use trimwright::guides;

#[test]
#[ignore = "minutes: run by name"]
fn the_sheets_of_every_demo_are_true() {
    let mut looked = 0;
    for path in demos() {
        let name = path.file_stem().expect("a stem").to_string_lossy().into_owned();
        for project in editions_at(&path) {
            for page in [Page::Letter, Page::A4] {
                let sheets = guides::sheets(&project.design, &project.layout, page);
                if sheets.is_empty() {
                    continue;
                }
                let made = write(&project, sheets);
                let mut faults = tagged::faults(&made.print, page);
                for (bytes, has_layers) in [(&made.print, false), (&made.layered, true)] {
                    faults.extend(paths::faults(bytes, &made.sheets, has_layers));
                    let (unlike, here) = measured::faults(bytes, &made.sheets);
                    faults.extend(unlike);
                    looked += here;
                }
                assert!(faults.is_empty(), "{name} {page:?}: {faults:#?}");
            }
        }
    }
    assert!(looked > 1000, "{looked} places");
}
