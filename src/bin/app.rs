//! The page.

fn main() {
    elbowroom::web::start();
}
