//! The very build that this page is of: its folder, and a worker out of it.

use web_sys::{Worker, WorkerOptions, WorkerType};

/// The build's folder, which stands in the page's head.
pub(super) fn build() -> Option<String> {
    let document = web_sys::window()?.document()?;
    let build = document.query_selector("meta[name=elbowroom-build]");
    build.ok()??.get_attribute("content")
}

/// A worker of this build.
pub(super) fn worker() -> Option<Worker> {
    let build = build()?;
    let options = WorkerOptions::new();
    options.set_type(WorkerType::Module);
    Worker::new_with_options(&format!("./{build}/worker-start.js"), &options).ok()
}
