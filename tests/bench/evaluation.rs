//! How long the core takes: a full evaluation, compiling, the band, the core's part of a pointer
//! move, and how evaluation and compiling grow with the run.

#![allow(clippy::expect_used, reason = "a bench stops at what it cannot read")]

mod corner_drag;
mod samples;
mod twenty;
mod zigzag;

use corner_drag::CornerDrag;
use criterion::{BenchmarkId, Criterion, SamplingMode};
use elbowroom::system::{CompiledRun, Draw, Ledger, bands, operating_point};
use samples::{Timing, growth_exponent};
use std::hint::black_box;
use std::path::{Path, PathBuf};
use std::time::Duration;

/// A median is read from so many samples.
const SAMPLES: usize = 200;
/// Fewer where only the slope matters.
const GROWTH_SAMPLES: usize = 20;
const SIZES: [u32; 4] = [10, 100, 1_000, 10_000];

const TIMED: [&str; 7] = [
    "full evaluation",
    "full evaluation with heat",
    "operating point",
    "ledger",
    "compile",
    "band of 512",
    "pointer move",
];
const GROWING: [&str; 4] = ["full evaluation", "operating point", "ledger", "compile"];

fn main() {
    let folder = PathBuf::from(env!("CARGO_TARGET_TMPDIR")).join("criterion");
    samples::forget(&folder);
    let mut criterion = Criterion::default()
        .sample_size(SAMPLES)
        .output_directory(&folder)
        .warm_up_time(Duration::from_secs(1))
        .measurement_time(Duration::from_secs(3))
        .configure_from_args();
    twenty_elements(&mut criterion);
    growth(&mut criterion);
    criterion.final_summary();
    report(&folder);
}

fn twenty_elements(criterion: &mut Criterion) {
    let plan = twenty::plan();
    let run = twenty::run();
    let (point, _) = twenty::evaluate(&run);
    let mut group = criterion.benchmark_group("twenty");
    group.bench_function("full evaluation", |bencher| {
        bencher.iter(|| twenty::evaluate(black_box(&run)));
    });
    let heated = twenty::run_with_heat();
    group.bench_function("full evaluation with heat", |bencher| {
        bencher.iter(|| twenty::evaluate(black_box(&heated)));
    });
    group.bench_function("operating point", |bencher| {
        bencher.iter(|| operating_point(black_box(&run), &Draw::LIKELY));
    });
    group.bench_function("ledger", |bencher| {
        bencher.iter(|| Ledger::of(black_box(&run), &point));
    });
    group.bench_function("compile", |bencher| {
        bencher.iter(|| CompiledRun::of(black_box(&plan)));
    });
    group.bench_function("band of 512", |bencher| {
        bencher.iter(|| bands(black_box(&run)).expect("air moves"));
    });
    group.bench_function("pointer move", |bencher| {
        let mut drag = CornerDrag::begin();
        bencher.iter(|| drag.next());
    });
    group.finish();
}

fn growth(criterion: &mut Criterion) {
    let mut group = criterion.benchmark_group("growth");
    group.sample_size(GROWTH_SAMPLES);
    group.sampling_mode(SamplingMode::Flat);
    group.measurement_time(Duration::from_secs(1));
    for size in SIZES {
        let plan = zigzag::plan(size as usize);
        let (run, _) = CompiledRun::of(&plan);
        assert_eq!(run.elements.len(), size as usize);
        let (point, _) = twenty::evaluate(&run);
        group.bench_with_input(
            BenchmarkId::new("full evaluation", size),
            &run,
            |bencher, run| {
                bencher.iter(|| twenty::evaluate(black_box(run)));
            },
        );
        group.bench_with_input(
            BenchmarkId::new("operating point", size),
            &run,
            |bencher, run| {
                bencher.iter(|| operating_point(black_box(run), &Draw::LIKELY));
            },
        );
        group.bench_with_input(BenchmarkId::new("ledger", size), &run, |bencher, run| {
            bencher.iter(|| Ledger::of(black_box(run), &point));
        });
        group.bench_with_input(BenchmarkId::new("compile", size), &plan, |bencher, plan| {
            bencher.iter(|| CompiledRun::of(black_box(plan)));
        });
    }
    group.finish();
}

/// Prints what was timed and leaves it in a file for the table of all benches.
fn report(folder: &Path) {
    let timings: Vec<Timing> = TIMED
        .iter()
        .filter_map(|name| Timing::read(folder, "twenty", name))
        .collect();
    println!("\n20 elements                median          p95");
    for timing in &timings {
        let (median, p95) = (timing.median_ns / 1e3, timing.p95_ns / 1e3);
        println!("{:<20} {median:>9.3} µs {p95:>9.3} µs", timing.name);
    }
    println!("\ncost = a elements^b, 10 to 10,000 elements: the last step alone in brackets");
    let mut exponents = serde_json::Map::new();
    for name in GROWING {
        let points: Vec<(f64, f64)> = SIZES
            .iter()
            .filter_map(|size| {
                let timing = Timing::read(folder, "growth", &format!("{name}/{size}"))?;
                Some((f64::from(*size), timing.median_ns))
            })
            .collect();
        let [.., before, last] = points.as_slice() else {
            continue;
        };
        let whole = growth_exponent(&points);
        let end = growth_exponent(&[*before, *last]);
        println!(
            "{name:<20} b = {whole:.2} ({end:.2}), {:.3} ms at {}",
            last.1 / 1e6,
            last.0
        );
        exponents.insert(
            name.to_owned(),
            serde_json::json!({ "exponent": whole, "last_step": end, "last_ms": last.1 / 1e6 }),
        );
    }
    let results = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/results/bench");
    std::fs::create_dir_all(&results).expect("the results' folder can be made");
    let text = serde_json::json!({ "twenty": timings, "growth": exponents });
    std::fs::write(results.join("evaluation.json"), format!("{text:#}\n"))
        .expect("the results can be written");
}
