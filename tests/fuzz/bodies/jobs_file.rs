//! Any bytes as a file of jobs: each job is a plan or an error, or the file as a whole is one.

use elbowroom::plan::{read_jobs, write_jobs};

/// Fails by a panic.
pub fn jobs_file(bytes: &[u8]) {
    let Ok(jobs) = read_jobs(bytes) else {
        return;
    };
    let plans: Vec<_> = jobs.into_iter().flatten().collect();
    let again = read_jobs(write_jobs(&plans).as_bytes());
    let again: Vec<_> = again.unwrap_or_default().into_iter().flatten().collect();
    assert_eq!(again, plans);
}
