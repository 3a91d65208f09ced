//! Rules about the true-size guides that a design asks for.

pub mod frame_too_thin;
pub mod frame_without_an_edge;
pub mod hard_by_eye;

use crate::design::model::{Design, Face, Framed, Frames, LayerId, Onto};
use crate::guides::asked::{framed, grounds_that_fit};
use crate::guides::frame::Unfit;
use crate::project::Project;

/// The frames asked for that cannot be cut, each with the reason.
fn unfit(project: &Project) -> Vec<(&Framed, Unfit)> {
    let Frames::These(these) = &project.design.frames else { return Vec::new() };
    let (design, layout) = (&project.design, &project.layout);
    these.iter().filter_map(|asked| framed(design, layout, asked).err().map(|unfit| (asked, unfit))).collect()
}

/// `the tag on the mat`.
fn what(design: &Design, asked: &Framed) -> String {
    let names: Vec<String> = asked.layers.iter().map(|layer| format!("the {}", design.layer(*layer).name)).collect();
    match asked.on {
        Some(on) => format!("{} on the {}", names.join(" and "), ground(design, on)),
        None => names.join(" and "),
    }
}

fn ground(design: &Design, on: Onto) -> String {
    match on {
        Onto::Card => "card".to_owned(),
        Onto::Layer(layer) => design.layer(layer).name.clone(),
    }
}

/// The nearest other thing that the frame can lie on, as it is written: `on mat`.
fn instead(project: &Project, asked: &Framed) -> Option<String> {
    let fits = grounds_that_fit(&project.design, &project.layout, &asked.layers);
    fits.first().map(|on| format!("on {}", ground(&project.design, *on)))
}

/// A layer's own words for where it lies, of no matter which side.
fn the(design: &Design, layer: LayerId) -> String {
    let own = design.layer(layer);
    match own.face {
        Face::Front => format!("the {}", own.name),
        _ => format!("the {} there", own.name),
    }
}
