//! The page's worker.

fn main() {
    elbowroom::web::start_worker();
}
