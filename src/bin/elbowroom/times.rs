//! How long the parts of the work took.

use std::ops::AddAssign;
use std::time::Duration;

/// How long the parts took, over all threads.
#[derive(Debug, Clone, Copy, Default)]
pub struct Times {
    /// Fetching bytes.
    pub reading: Duration,
    /// From bytes to plans.
    pub parsing: Duration,
    /// From plans to answers.
    pub working: Duration,
    /// From answers to text.
    pub printing: Duration,
}

impl AddAssign for Times {
    fn add_assign(&mut self, other: Self) {
        self.reading += other.reading;
        self.parsing += other.parsing;
        self.working += other.working;
        self.printing += other.printing;
    }
}

impl Times {
    /// All of it as JSON, with what else a bench wants to know.
    pub fn told(&self, plans: usize, threads: usize, whole: Duration) -> String {
        let seconds = |time: Duration| time.as_secs_f64();
        let told = serde_json::json!({
            "plans": plans,
            "threads": threads,
            "reading_s": seconds(self.reading),
            "parsing_s": seconds(self.parsing),
            "working_s": seconds(self.working),
            "printing_s": seconds(self.printing),
            "whole_s": seconds(whole),
            "processor_s": processor(),
            "peak_memory_kib": peak_memory(),
        });
        told.to_string()
    }
}

/// The processor's time so far, of the program and of the system for it, where the system tells it
/// (proc(5), `stat`, the 14th and 15th field, in ticks of 1/100 s on every Linux).
fn processor() -> Option<f64> {
    const TICKS_PER_SECOND: f64 = 100.0;
    let stat = std::fs::read_to_string("/proc/self/stat").ok()?;
    // The second field is the program's name, in brackets, which may hold blanks.
    let (_, fields) = stat.rsplit_once(')')?;
    let fields = fields.split_whitespace().skip(11).take(2);
    let ticks: Option<f64> = fields.map(|field| field.parse::<f64>().ok()).sum();
    ticks.map(|ticks| ticks / TICKS_PER_SECOND)
}

/// The most memory that was held, where the system tells it (proc(5), VmHWM), in KiB.
fn peak_memory() -> Option<u64> {
    let status = std::fs::read_to_string("/proc/self/status").ok()?;
    let line = status
        .lines()
        .find_map(|line| line.strip_prefix("VmHWM:"))?;
    line.split_whitespace().next()?.parse().ok()
}
