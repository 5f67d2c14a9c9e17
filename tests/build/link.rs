//! What the linker is told of the page's program alone: relocations stay in it for the step that parts it
//! in two (`split.mjs`). In a program that is not parted they would keep all that nothing calls.

fn main() {
    println!("cargo::rerun-if-changed=tests/build/link.rs");
    let is_page = std::env::var_os("CARGO_FEATURE_WEB").is_some();
    let is_wasm = std::env::var("CARGO_CFG_TARGET_FAMILY").is_ok_and(|family| family == "wasm");
    if is_page && is_wasm {
        println!("cargo::rustc-link-arg-bin=app=--emit-relocs");
    }
}
