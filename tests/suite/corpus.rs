//! The fuzzer's corpora, replayed without the fuzzer: each body fails by a panic.
//! Source: the inputs that the fuzzer kept because each covered more (`tests/fuzz/run.mjs --keep`).

#[path = "../fuzz/bodies/editor_actions.rs"]
mod editor_actions;
#[path = "../fuzz/bodies/jobs_file.rs"]
mod jobs_file;
#[path = "../fuzz/bodies/lesson_file.rs"]
mod lesson_file;
#[path = "../fuzz/bodies/plan_file.rs"]
mod plan_file;
#[path = "../fuzz/bodies/share_link.rs"]
mod share_link;
#[path = "../fuzz/bodies/typed_length.rs"]
mod typed_length;

use std::path::Path;

/// Fewer files than each corpus has: a test must not pass over an empty folder.
const LEAST: usize = 3;

fn replay(target: &str, body: impl Fn(&[u8])) {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/fuzz/corpus");
    let files = std::fs::read_dir(folder.join(target)).unwrap();
    let mut files: Vec<_> = files.map(|file| file.unwrap().path()).collect();
    files.sort();
    assert!(files.len() >= LEAST, "only {} in {target}", files.len());
    for file in files {
        println!("{}", file.display());
        body(&std::fs::read(file).unwrap());
    }
}

#[test]
fn plan_files() {
    replay("plan_file", plan_file::plan_file);
}

#[test]
fn files_of_jobs() {
    replay("jobs_file", jobs_file::jobs_file);
}

#[test]
fn files_of_lessons() {
    replay("lesson_file", lesson_file::lesson_file);
}

#[test]
fn fragments_of_links() {
    replay("share_link", share_link::share_link);
}

#[test]
fn typed_lengths() {
    replay("typed_length", typed_length::typed_length);
}

#[test]
fn actions_on_the_editor() {
    replay("editor_actions", editor_actions::editor_actions);
}
