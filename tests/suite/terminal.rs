//! The terminal tool as it is run: over many plans, in order, with errors among them, and its exit codes.

use crate::example_file::{document, example};
use crate::tally::Tally;
use elbowroom::plan::{Plan, blank, read, read_directly, read_jobs, write, write_jobs};
use elbowroom::report::figures;
use serde_json::Value;
use std::fs;
use std::io::{Read, Write};
use std::path::PathBuf;
use std::process::{Command, Output, Stdio};

/// A folder of a test's own, empty at its start.
fn folder(name: &str) -> PathBuf {
    let path = PathBuf::from(env!("CARGO_TARGET_TMPDIR"))
        .join("terminal")
        .join(name);
    let _ = fs::remove_dir_all(&path);
    fs::create_dir_all(&path).unwrap();
    path
}

fn tool(arguments: &[&str]) -> Command {
    let mut command = Command::new(env!("CARGO_BIN_EXE_elbowroom"));
    command.args(arguments);
    command
}

fn run(arguments: &[&str], input: &[u8]) -> Output {
    let mut child = tool(arguments)
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .stderr(Stdio::piped())
        .spawn()
        .unwrap();
    let mut stdin = child.stdin.take().unwrap();
    let input = input.to_vec();
    let writer = std::thread::spawn(move || {
        // A tool that refuses its arguments reads nothing.
        let _ = stdin.write_all(&input);
    });
    let output = child.wait_with_output().unwrap();
    writer.join().unwrap();
    output
}

fn lines(output: &Output) -> Vec<Value> {
    let text = String::from_utf8(output.stdout.clone()).unwrap();
    text.lines()
        .map(|line| serde_json::from_str(line).unwrap())
        .collect()
}

fn titled(title: &str) -> Plan {
    Plan {
        title: title.to_owned(),
        ..example()
    }
}

/// What the page shows, by way of JSON.
fn expected(plan: &Plan) -> Value {
    serde_json::to_value(figures(plan).0).unwrap()
}

#[test]
fn one_plan_prints_as_the_page_has_it() {
    let folder = folder("one");
    let file = folder.join("plan.json");
    fs::write(&file, write(&example())).unwrap();
    let output = run(&["figures", file.to_str().unwrap()], b"");
    assert_eq!(output.status.code(), Some(0));
    let text = String::from_utf8(output.stdout).unwrap();
    assert_eq!(
        text,
        serde_json::to_string_pretty(&figures(&example()).0).unwrap() + "\n"
    );
    assert!(output.stderr.is_empty());
}

#[test]
fn many_are_answered_in_the_order_in_which_they_were_named() {
    let folder = folder("many");
    let inner = folder.join("deeper");
    fs::create_dir(&inner).unwrap();
    let mut names = Vec::new();
    for number in 0..100 {
        let path = if number % 3 == 0 { &inner } else { &folder };
        let path = path.join(format!("{number:03}.json"));
        match number {
            40 => fs::write(&path, b"{").unwrap(),
            _ => fs::write(&path, write(&titled(&format!("{number}")))).unwrap(),
        }
        names.push(path.display().to_string());
    }
    fs::write(folder.join("notes.txt"), b"no plan").unwrap();
    // The folder's own first, since "0" comes before "d".
    names.sort();
    let last = folder.join("last.JSON");
    fs::write(&last, write(&titled("last"))).unwrap();
    fs::rename(&last, folder.parent().unwrap().join("last.JSON")).unwrap();
    let last = folder
        .parent()
        .unwrap()
        .join("last.JSON")
        .display()
        .to_string();
    names.push(last.clone());
    for threads in ["1", "2", "7"] {
        let arguments = [
            "figures",
            "--threads",
            threads,
            folder.to_str().unwrap(),
            &last,
        ];
        let output = run(&arguments, b"");
        assert_eq!(output.status.code(), Some(3));
        let lines = lines(&output);
        let text = String::from_utf8(output.stdout).unwrap();
        let sources: Vec<&str> = lines
            .iter()
            .map(|line| line["source"].as_str().unwrap())
            .collect();
        assert_eq!(sources, names);
        for line in &lines {
            let source = line["source"].as_str().unwrap();
            if source.ends_with("040.json") {
                assert_eq!(
                    line["error"]["message"],
                    "The file is not complete JSON: line 1, column 1."
                );
                assert!(line.get("answer").is_none());
            } else {
                let plan = read(&fs::read(source).unwrap()).unwrap();
                assert_eq!(line["title"], plan.title);
                assert_eq!(line["answer"], expected(&plan));
                let title = serde_json::to_string(&plan.title).unwrap();
                let answer = serde_json::to_string(&figures(&plan).0).unwrap();
                let whole =
                    format!("{{\"source\":\"{source}\",\"title\":{title},\"answer\":{answer}}}");
                assert!(text.lines().any(|line| line == whole), "{source}");
            }
        }
    }
}

#[test]
fn standard_input_holds_one_plan_or_one_a_line() {
    let pretty = write(&example());
    let one_line = document().to_string();
    let both = format!("\n{one_line}\nnot a plan\n\n{one_line}");
    let single = |input: &str| {
        let output = run(&["figures", "-"], input.as_bytes());
        assert_eq!(output.status.code(), Some(0));
        let found: Value = serde_json::from_slice(&output.stdout).unwrap();
        assert_eq!(found, expected(&read(input.as_bytes()).unwrap()));
    };
    single(&pretty);
    single(&one_line);
    let output = run(&["figures", "-"], both.as_bytes());
    assert_eq!(output.status.code(), Some(3));
    let lines = lines(&output);
    let sources: Vec<&str> = lines
        .iter()
        .map(|line| line["source"].as_str().unwrap())
        .collect();
    assert_eq!(sources, ["-:2", "-:3", "-:5"]);
    let plan = read(one_line.as_bytes()).unwrap();
    assert_eq!(lines[0]["answer"], expected(&plan));
    assert!(lines[1]["error"]["message"].is_string());
    assert_eq!(lines[2]["answer"], expected(&plan));
    // Nothing at all is not a plan.
    let output = run(&["figures", "-"], b"");
    assert_eq!((output.status.code(), output.stdout.len()), (Some(0), 0));
}

#[test]
fn a_file_of_jobs_and_a_file_of_lines_hold_many_plans() {
    let folder = folder("jobs");
    let jobs = folder.join("a-jobs.json");
    let plans = [titled("first"), blank("second".to_owned())];
    fs::write(&jobs, write_jobs(&plans)).unwrap();
    let lines_file = folder.join("b.jsonl");
    let line = document().to_string();
    // One line that is longer than any plan.
    let long = "x".repeat((4 << 20) + 10);
    fs::write(&lines_file, format!("{line}\n{long}\n{line}\n")).unwrap();
    let output = run(&["figures", folder.to_str().unwrap()], b"");
    let found = lines(&output);
    let sources: Vec<String> = found
        .iter()
        .map(|line| line["source"].as_str().unwrap().to_owned())
        .collect();
    let (jobs, lines_file) = (jobs.display(), lines_file.display());
    assert_eq!(
        sources,
        [
            format!("{jobs}#1"),
            format!("{jobs}#2"),
            format!("{lines_file}:1"),
            format!("{lines_file}:2"),
            format!("{lines_file}:3")
        ]
    );
    assert_eq!(found[0]["answer"], expected(&plans[0]));
    assert_eq!(found[1]["answer"], expected(&plans[1]));
    assert!(
        found[3]["error"]["message"]
            .as_str()
            .unwrap()
            .contains("4194304")
    );
    assert_eq!(found[4]["answer"], found[2]["answer"]);
}

#[test]
fn the_exit_code_says_what_was_wrong() {
    let folder = folder("codes");
    let empty = folder.join("empty");
    fs::create_dir(&empty).unwrap();
    let file = |name: &str, text: &str| {
        let path = folder.join(name);
        fs::write(&path, text).unwrap();
        path.display().to_string()
    };
    let plan = file("plan.json", &write(&blank("no visit".to_owned())));
    let broken = file(
        "broken.json",
        &write(&example()).replace("\"x_m\"", "\"z_m\""),
    );
    let gone = folder.join("gone.json").display().to_string();
    let empty = empty.display().to_string();
    let mut tally = Tally::new("exit codes");
    for (arguments, code) in [
        (vec!["figures", &plan], 0),
        (vec!["check", &plan], 0),
        (vec!["reroute", &plan], 0),
        (vec!["figures", &gone], 1),
        (vec!["figures", &empty], 1),
        (vec!["figures"], 2),
        (vec!["figures", "--format", "verse", &plan], 2),
        (vec!["reroute", "--clearance", "-1", &plan], 2),
        (vec!["reroute", "--clearance=-1", &plan], 2),
        (vec!["figures", &broken], 3),
        (vec!["diagnose", &plan], 4),
        (vec!["sheet", &plan], 0),
        (vec!["sheet", "--visit", "none", &plan], 4),
        (vec!["diagnose", &plan, &broken], 3),
        (vec!["diagnose", &plan, &broken, &gone], 1),
    ] {
        let output = run(&arguments, b"");
        tally.equal(format!("{arguments:?}"), &output.status.code(), &Some(code));
    }
    let output = run(&["figures", &broken], b"");
    assert!(output.stdout.is_empty());
    let said = String::from_utf8(output.stderr).unwrap();
    assert!(said.contains("broken.json: At "), "{said}");
    // Each code that is told of is one of those tried here.
    let help = String::from_utf8(run(&["--help"], b"").stdout).unwrap();
    for code in ["0:", "1:", "2:", "3:", "4:"] {
        assert!(help.contains(code), "{help}");
    }
    tally.finish(14);
}

#[test]
fn the_path_to_the_field_stands_in_the_line() {
    let spoilt =
        write(&example()).replacen("\"altitude_m\": ", "\"altitude_m\": 1e9, \"was_m\": ", 1);
    let input = format!(
        "{}\n{}\n",
        serde_json::from_str::<Value>(&spoilt).unwrap(),
        document()
    );
    let output = run(&["figures", "-"], input.as_bytes());
    let found = lines(&output);
    assert!(
        found[0]["error"]["path"]
            .as_str()
            .unwrap()
            .starts_with("site"),
        "{}",
        found[0]
    );
    assert!(found[1]["error"].is_null());
}

#[test]
fn a_table_has_a_row_a_plan_and_its_texts_are_no_formulas() {
    let plans = [
        titled("=HYPERLINK(\"x\"), two"),
        titled("plain"),
        // An em space before it hides no formula.
        blank("\u{2003}\t=1+1".to_owned()),
    ];
    let mut input: String = plans
        .iter()
        .map(|plan| {
            serde_json::from_str::<Value>(&write(plan))
                .unwrap()
                .to_string()
                + "\n"
        })
        .collect();
    input.push_str("broken\n");
    for command in ["figures", "check", "reroute", "diagnose", "sheet"] {
        let output = run(&[command, "--format", "csv", "-"], input.as_bytes());
        let mut reader = csv::Reader::from_reader(output.stdout.as_slice());
        let head: Vec<String> = reader
            .headers()
            .unwrap()
            .iter()
            .map(str::to_owned)
            .collect();
        assert_eq!(head[..3], ["source", "title", "error"]);
        // The reader refuses rows of another length.
        let rows: Vec<csv::StringRecord> = reader.records().map(Result::unwrap).collect();
        let of = |source: &str| {
            rows.iter()
                .filter(|row| &row[0] == source)
                .collect::<Vec<_>>()
        };
        for source in ["'-:1", "'-:2", "'-:3", "'-:4"] {
            assert!(!of(source).is_empty(), "{command} {source} {rows:?}");
        }
        assert!(!of("'-:4")[0][2].is_empty());
        if command == "figures" {
            assert_eq!(&of("'-:1")[0][1], "'=HYPERLINK(\"x\"), two");
            assert_eq!(&of("'-:3")[0][1], "'\u{2003} =1+1");
            let at = head
                .iter()
                .position(|name| name == "back_pressure_pa")
                .unwrap();
            let found: f64 = of("'-:2")[0][at].parse().unwrap();
            let totals = figures(&plans[1]).0.totals.unwrap();
            assert_eq!(found.to_bits(), totals.back_pressure.pascals().to_bits());
        }
    }
}

/// Whoever reads may stop, as `head` does: no complaint, and an end before all was worked out.
/// A file without an end is read no further than the longest file of jobs may be.
#[cfg(target_os = "linux")]
#[test]
fn a_file_without_end_is_told_to_be_too_large() {
    let output = run(&["figures", "/dev/zero"], b"");
    let said = String::from_utf8(output.stderr).unwrap();
    assert_eq!(output.status.code(), Some(3), "{said}");
    assert!(said.contains("at most 4194304"), "{said}");
}

#[test]
fn a_reader_that_stops_is_no_fault() {
    let line = document().to_string() + "\n";
    let mut child = tool(&["figures", "-"])
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .stderr(Stdio::piped())
        .spawn()
        .unwrap();
    let mut stdin = child.stdin.take().unwrap();
    let writer = std::thread::spawn(move || {
        let mut written = 0;
        // Far more than fits between the two programs.
        while written < 20_000 && stdin.write_all(line.as_bytes()).is_ok() {
            written += 1;
        }
        written
    });
    let mut stdout = child.stdout.take().unwrap();
    let mut first = [0; 100];
    stdout.read_exact(&mut first).unwrap();
    drop(stdout);
    let output = child.wait_with_output().unwrap();
    assert_eq!(output.status.code(), Some(0));
    assert!(
        output.stderr.is_empty(),
        "{}",
        String::from_utf8_lossy(&output.stderr)
    );
    assert!(writer.join().unwrap() < 20_000);
}

/// The two readers are one in what they take and in what they say.
#[test]
fn the_quick_reader_reads_what_the_plain_one_reads() {
    let text = write(&example());
    let spoilt = |index: usize| {
        let mut bytes = text.clone().into_bytes();
        let place = (index * 7919) % bytes.len();
        match index % 5 {
            0 => drop(bytes.remove(place)),
            1 => bytes[place] = b'7',
            2 => bytes.truncate(place),
            3 => bytes.insert(place, b'-'),
            _ => bytes.swap(place, (place * 31) % text.len()),
        }
        bytes
    };
    let mut tally = Tally::new("the quick reader");
    let twice = text.replacen(
        "\"title\"",
        "\"title\": \"x\", \"version\": 1, \"title\"",
        1,
    );
    let late =
        text.replacen("\"version\": 1,", "", 1)
            .replacen("\"run\"", "\"version\": 1, \"run\"", 1);
    let marked = format!("\u{feff}{text}");
    for bytes in [&text, &twice, &late, &marked].map(|it| it.clone().into_bytes()) {
        tally.holds("a plan", read(&bytes).is_ok());
        tally.equal("a plan", &read_directly(&bytes), &read(&bytes));
    }
    let mut read_well = 0;
    for index in 0..1000 {
        let bytes = spoilt(index);
        let plain = read(&bytes);
        read_well += usize::from(plain.is_ok());
        tally.equal(index, &read_directly(&bytes), &plain);
        // The reader of jobs goes the plain way too.
        tally.equal(
            index,
            &read_jobs(&bytes)
                .map(|mut it| it.remove(0))
                .and_then(|it| it)
                .ok(),
            &plain.ok(),
        );
    }
    assert!((50..950).contains(&read_well), "{read_well}");
    tally.finish(2000);
}
