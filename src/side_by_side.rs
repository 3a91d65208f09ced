//! Work on several things at once, on as many cores as there are, told of in the order given.
//!
//! What comes out depends on the work alone, never on which of it ends first. Must never know what the work is.

use std::collections::BTreeMap;
use std::sync::atomic::{AtomicUsize, Ordering};
use std::sync::mpsc;
use std::thread;

/// Room for what calls itself, as on the first thread of a program.
const STACK: usize = 8 << 20;

/// Does `work` on each thing and tells `done` what came of it, in order and as early as can be. Nothing new is begun
/// once `done` gives an error.
///
/// # Errors
/// The first that `done` gives.
///
/// # Panics
/// Where `work` does.
pub fn each<T: Sync, R: Send, E>(
    things: &[T],
    work: impl Fn(&T) -> R + Sync,
    mut done: impl FnMut(&T, R) -> Result<(), E>,
) -> Result<(), E> {
    let cores = thread::available_parallelism().map_or(1, usize::from).min(things.len());
    if cores < 2 {
        return things.iter().try_for_each(|thing| done(thing, work(thing)));
    }
    let next = AtomicUsize::new(0);
    let (sender, receiver) = mpsc::channel();
    thread::scope(|scope| {
        for _ in 0..cores {
            let (sender, next, work) = (sender.clone(), &next, &work);
            let worker = move || {
                while let Some(number) = Some(next.fetch_add(1, Ordering::Relaxed)).filter(|own| *own < things.len()) {
                    // Where nobody listens any more the rest is not wanted.
                    if sender.send((number, work(&things[number]))).is_err() {
                        return;
                    }
                }
            };
            // With fewer threads than cores it only takes longer.
            let _ = thread::Builder::new().stack_size(STACK).spawn_scoped(scope, worker);
        }
        drop(sender);
        let mut early = BTreeMap::new();
        for (number, thing) in things.iter().enumerate() {
            while !early.contains_key(&number) {
                let Ok((own, came)) = receiver.recv() else { break };
                early.insert(own, came);
            }
            // No thread could be had at all: the work is done here.
            let came = early.remove(&number).unwrap_or_else(|| work(thing));
            if let Err(error) = done(thing, came) {
                next.store(things.len(), Ordering::Relaxed);
                return Err(error);
            }
        }
        Ok(())
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_ends_early_is_told_in_its_turn() {
        let things: Vec<u64> = (0..40).collect();
        let mut told = Vec::new();
        let slow_first = |thing: &u64| {
            thread::sleep(std::time::Duration::from_millis(if *thing == 0 { 20 } else { 0 }));
            thing * 2
        };
        let ended = each(&things, slow_first, |thing, came| {
            told.push((*thing, came));
            Ok::<(), String>(())
        });
        assert_eq!(ended, Ok(()));
        assert_eq!(told, things.iter().map(|thing| (*thing, thing * 2)).collect::<Vec<_>>());
    }

    #[test]
    fn an_error_ends_it() {
        let things = [1, 2, 3, 4];
        let mut told = 0;
        let ended = each(
            &things,
            |thing| *thing,
            |_, came| {
                told += 1;
                if came == 2 { Err("two") } else { Ok(()) }
            },
        );
        assert_eq!((ended, told), (Err("two"), 2));
        assert_eq!(each(&[] as &[u8], |thing| *thing, |_, _| Err("none")), Ok(()));
    }
}
