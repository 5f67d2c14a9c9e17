//! What leaves the page: sheet, drawing, plots, ledger and cut list agree to the last printed digit, are
//! true to scale, and hold whatever was typed as nothing but text.
//!
//! Sources of what is right: XML as the crate `roxmltree` reads it, CSV as the crate `csv` reads it, both
//! of which know nothing of the project; the figures that the page reads.

use crate::random_plan::with_blower;
use crate::seeded;
use crate::visits::house_with_readings;
use elbowroom::editor::{Action, State, update};
use elbowroom::plan::{Plan, example};
use elbowroom::report::cut_list::cut_list;
use elbowroom::report::handover::{HandoverJob, SheetReading, SheetWish, handover_sheet};
use elbowroom::report::words::{Language, Message, say};
use elbowroom::report::{
    DrawingWish, Paper, Sheet, SheetPart, cut_list_csv, drawing_at, drawing_svg, heat_svg,
    ledger_csv, pressure_svg, sheet_file, sheet_html,
};
use elbowroom::scene::{Text, scene};
use elbowroom::units::{Length, Pressure, UnitSystem};
use proptest::prelude::*;

const ENGLISH: Language = Language::English;
const BOTH: [UnitSystem; 2] = [UnitSystem::UsCustomary, UnitSystem::Si];
/// Random plans: the bar asks for fifty.
const PLANS: u32 = 50;

fn wish(reading: SheetReading, units: UnitSystem) -> SheetWish {
    SheetWish {
        reading,
        paper: Paper::Letter,
        language: ENGLISH,
        units,
    }
}

fn read_csv(text: &str) -> Vec<Vec<String>> {
    let mut reader = csv::ReaderBuilder::new()
        .has_headers(false)
        .from_reader(text.as_bytes());
    let rows = reader
        .records()
        .map(|row| row.unwrap().iter().map(str::to_owned).collect());
    rows.collect()
}

/// Every text of an SVG drawing.
fn svg_texts(svg: &str) -> Vec<String> {
    let document = roxmltree::Document::parse(svg).unwrap();
    let texts = document
        .descendants()
        .filter(|node| node.has_tag_name(("http://www.w3.org/2000/svg", "text")));
    texts
        .map(|node| node.text().unwrap_or_default().trim().to_owned())
        .collect()
}

fn tables(sheet: &Sheet) -> Vec<&Vec<Vec<String>>> {
    let parts = sheet.parts.iter().filter_map(|part| match part {
        SheetPart::Table(table) => Some(&table.rows),
        _ => None,
    });
    parts.collect()
}

/// What stands on the sheet, in the files and on the page is the same text: the page shows
/// `UnitSystem`'s figures of `Figures`, which are taken here.
fn agree(plan: &Plan, units: UnitSystem) -> Result<(), TestCaseError> {
    let job = HandoverJob::of(plan.clone(), None);
    let figures = &job.run.figures;
    let Some(totals) = &figures.totals else {
        return Ok(());
    };
    let sheet = handover_sheet(&job, wish(SheetReading::Trade, units));
    let tables = tables(&sheet);
    let bands = job.run.bands.unwrap();
    let band = |low: f64, high: f64, shown: &dyn Fn(f64) -> elbowroom::units::Shown| {
        format!("{} to {}", shown(low).figure, shown(high))
    };
    let pressure = |pascals: f64| units.pressure(Pressure::from_pascals(pascals));
    let told = &tables[0];
    prop_assert_eq!(&told[0][1], &units.airflow(totals.airflow).to_string());
    prop_assert_eq!(
        &told[1][1],
        &units.pressure(totals.back_pressure).to_string()
    );
    let of_pressure = band(bands.back_pressure.low, bands.back_pressure.high, &pressure);
    prop_assert_eq!(&told[1][2], &of_pressure);
    prop_assert_eq!(&told[2][1], &units.velocity(totals.velocity).to_string());
    let length = units.length(figures.code.with_deductions).to_string();
    prop_assert_eq!(&told[3][1], &length);
    let ledger = read_csv(&ledger_csv(&job.run, ENGLISH, units));
    prop_assert_eq!(ledger.len(), figures.elements.len() + 1);
    let on_sheet = tables
        .iter()
        .find(|table| table[0].len() == 9)
        .expect("a ledger");
    for (index, element) in figures.elements.iter().enumerate() {
        let air = element.air.as_ref().unwrap();
        let (row, on_sheet) = (&ledger[index + 1], &on_sheet[index]);
        let loss = units.pressure(air.loss).figure;
        let equivalent = units.equivalent_length(air.equivalent_length).figure;
        let developed = units.length(element.developed_length).figure;
        let plain = |text: &str| text.replace('\u{2212}', "-");
        prop_assert_eq!(&row[5], &plain(&loss));
        prop_assert_eq!(&on_sheet[4], &loss);
        prop_assert_eq!(&row[9], &plain(&equivalent));
        prop_assert_eq!(&on_sheet[7], &equivalent);
        prop_assert_eq!(&row[3], &developed);
        prop_assert_eq!(&on_sheet[2], &developed);
        prop_assert_eq!(&row[4], &air.rank.to_string());
        prop_assert_eq!(
            &row[1],
            &say(ENGLISH, units, Message::Element(&element.element))
        );
        let deduction = element.code_deduction;
        let deduction = deduction.map(|length| units.equivalent_length(length).figure);
        prop_assert_eq!(&row[10], &deduction.unwrap_or_default());
    }
    // Every length on the drawing is the scene's, as the page shows it.
    let drawing = drawing_svg(plan, job.run.ledger(), ENGLISH, units);
    let texts = svg_texts(&drawing);
    let mut lengths = 0;
    for mark in scene(plan, job.run.ledger()) {
        if let elbowroom::scene::Shape::Text { text, .. } = &mark.shape {
            let words = say(ENGLISH, units, Message::Drawing(text));
            prop_assert!(texts.contains(&words), "{} not in {:?}", words, texts);
            lengths += u32::from(matches!(text, Text::LegLength(_)));
        }
    }
    prop_assert!(lengths > 0);
    // The plot's axis ends at the greatest pressure on it, and the run at its developed length.
    let plot = svg_texts(&pressure_svg(&job.run, None, ENGLISH, units).unwrap());
    let end = format!("developed length {}", units.length(totals.developed_length));
    prop_assert!(plot.contains(&end), "{:?}", plot);
    if let Some(heat) = heat_svg(&job.run, ENGLISH, units) {
        prop_assert!(svg_texts(&heat).contains(&end));
    }
    // Cut list: the sheet's rows are the file's.
    let list = cut_list(plan, figures);
    let file = read_csv(&cut_list_csv(&list, ENGLISH, units));
    let parts: Vec<&Vec<String>> = file.iter().filter(|row| row[0] == "part").collect();
    let on_sheet = tables
        .iter()
        .find(|table| table[0].len() == 4 && table[0][0] == parts[0][1]);
    let on_sheet = on_sheet.expect("parts");
    prop_assert_eq!(on_sheet.len(), parts.len());
    for (row, part) in on_sheet.iter().zip(&parts) {
        prop_assert_eq!(&row[..], &part[1..5]);
    }
    let cut: Length = list
        .pipe
        .iter()
        .flat_map(|pipe| &pipe.pieces)
        .map(|piece| piece.length)
        .sum();
    let cuts = file.iter().filter(|row| row[0] == "cut").count();
    let pieces = list
        .pipe
        .iter()
        .map(|pipe| pipe.pieces.len())
        .sum::<usize>();
    prop_assert_eq!(cuts, pieces);
    let bought: f64 = list.pipe.iter().map(|pipe| pipe.packing.bought()).sum();
    prop_assert!(bought >= cut.metres() - 1e-9);
    Ok(())
}

#[test]
fn sheet_files_and_page_agree_to_the_last_digit() {
    seeded::check(PLANS / 10, &with_blower(), |plan| {
        BOTH.into_iter().try_for_each(|units| agree(&plan, units))
    });
}

/// Texts that would do something where they were taken for more than text.
fn hostile() -> Vec<String> {
    vec![
        "<script>alert(1)</script>".to_owned(),
        "\"><img src=x onerror=alert(1)>".to_owned(),
        "'; DROP TABLE plans; --".to_owned(),
        "=cmd|' /C calc'!A0".to_owned(),
        "+1+1".to_owned(),
        "-2+3".to_owned(),
        "@SUM(A1)".to_owned(),
        "\t=1+1".to_owned(),
        "\r\n=1+1".to_owned(),
        " =1+1".to_owned(),
        "\u{202e}\u{feff}=1+1".to_owned(),
        "\u{ff1d}1+1".to_owned(),
        "a\u{202e}b\u{2066}c\u{200f}".to_owned(),
        "]]><svg onload=alert(1)>".to_owned(),
        "</style><script>1</script>".to_owned(),
        "&amp;&#60;b&#62;".to_owned(),
        "\u{1f525}\u{1f469}\u{200d}\u{1f527}\u{0}\u{7}\u{fffe}".to_owned(),
        "x".repeat(10_000),
        "\u{05d0}".repeat(10_000),
    ]
}

fn with_texts(text: &str) -> Plan {
    let mut plan = house_with_readings();
    text.clone_into(&mut plan.title);
    text.clone_into(&mut plan.note);
    for obstacle in &mut plan.obstacles {
        text.clone_into(&mut obstacle.name);
    }
    for visit in &mut plan.visits {
        text.clone_into(&mut visit.date);
        text.clone_into(&mut visit.note);
    }
    text.clone_into(&mut plan.handover.date);
    text.clone_into(&mut plan.handover.made_for);
    text.clone_into(&mut plan.handover.made_by);
    text.clone_into(&mut plan.handover.remarks);
    plan
}

/// Elements that a sheet is made of; anything else came from a text.
const OWN: [&str; 26] = [
    "h1",
    "h2",
    "p",
    "ul",
    "ol",
    "li",
    "table",
    "thead",
    "tbody",
    "tr",
    "th",
    "td",
    "div",
    "dl",
    "dt",
    "dd",
    "figure",
    "img",
    "figcaption",
    "svg",
    "g",
    "path",
    "circle",
    "rect",
    "text",
    "image",
];

#[test]
fn whatever_was_typed_is_nothing_but_text() {
    let plain = HandoverJob::of(with_texts("plain"), None);
    for text in hostile() {
        let plan = with_texts(&text);
        let job = HandoverJob::of(plan.clone(), None);
        for reading in [SheetReading::Customer, SheetReading::Trade] {
            let wish = wish(reading, UnitSystem::UsCustomary);
            let sheet = handover_sheet(&job, wish);
            let html = sheet_html(&sheet);
            // What the sheet is written in is well-formed XML too, but for the unclosed image.
            let closed = html.replace("\"><figcaption>", "\"/><figcaption>");
            let document = format!("<main>{closed}</main>");
            let document = roxmltree::Document::parse(&document)
                .unwrap_or_else(|error| panic!("{error} with {text:.60}"));
            let elements = document.root_element().descendants();
            let elements = elements.filter(roxmltree::Node::is_element).skip(1);
            let mut count = 0;
            for element in elements {
                count += 1;
                let name = element.tag_name().name();
                assert!(OWN.contains(&name), "{name} with {text:.60}");
                for attribute in element.attributes() {
                    let name = attribute.name();
                    assert!(!name.starts_with("on") && name != "style", "{name}");
                }
            }
            let plain = sheet_html(&handover_sheet(&plain, wish));
            let of_plain = format!(
                "<main>{}</main>",
                plain.replace("\"><figcaption>", "\"/><figcaption>")
            );
            let of_plain = roxmltree::Document::parse(&of_plain).unwrap();
            let of_plain = of_plain.root_element().descendants();
            let expected = of_plain.filter(roxmltree::Node::is_element).count() - 1;
            assert_eq!(count, expected, "{text:.60}");
            let file = sheet_file(&sheet, &plan.title, Paper::A4, ENGLISH);
            assert_eq!(file.matches("<script").count(), 0);
            assert_eq!(file.matches("</style>").count(), 1);
            assert_eq!(file.matches("</title>").count(), 1);
        }
        for svg in [
            drawing_svg(&plan, job.run.ledger(), ENGLISH, UnitSystem::Si),
            pressure_svg(&job.run, job.visit.as_ref(), ENGLISH, UnitSystem::Si).unwrap(),
        ] {
            let document = roxmltree::Document::parse(&svg).unwrap();
            for node in document.descendants().filter(roxmltree::Node::is_element) {
                assert!(
                    OWN.contains(&node.tag_name().name()),
                    "{:?}",
                    node.tag_name()
                );
                assert!(node.attributes().all(|it| !it.name().starts_with("on")));
            }
            let turns = ['\u{202e}', '\u{2066}', '\u{200f}'];
            assert!(!svg.contains(turns), "{text:.60}");
            // A long name does not make a long drawing.
            let width = document.root_element().attribute("width").unwrap();
            let width: f64 = width.trim_end_matches("mm").parse().unwrap();
            assert!(width < 500.0, "{width}");
        }
    }
}

/// Source: the leading signs that spreadsheets take for a formula's beginning, common practice, no
/// source; RFC 4180 for the rest, as the crate `csv` reads it.
#[test]
fn no_cell_begins_a_formula() {
    use elbowroom::report::{CsvCell, CsvTable};
    for text in hostile() {
        let table = CsvTable {
            head: vec!["a".to_owned(), "b".to_owned()],
            rows: vec![vec![
                CsvCell::Text(text.clone()),
                CsvCell::Figure(text.clone()),
            ]],
        };
        let rows = read_csv(&table.text());
        assert_eq!(rows.len(), 2, "{text:.60}");
        for cell in &rows[1] {
            let first = cell
                .trim_start_matches(['\u{feff}', '\u{202e}', ' '])
                .chars()
                .next();
            let begins = ['=', '+', '-', '@', '\t', '\r', '\n', '\u{ff1d}'];
            assert!(
                !first.is_some_and(|first| begins.contains(&first)),
                "{cell:.60}"
            );
            let letters = |text: &str| {
                let held = |letter: &char| {
                    !letter.is_control() && !letter.is_whitespace() && *letter != '\''
                };
                text.chars().filter(held).collect::<String>()
            };
            assert_eq!(letters(cell).trim(), letters(&text).trim());
        }
        for text in table.text().split("\r\n") {
            assert!(!text.contains('\r'));
        }
    }
    let figures = CsvTable {
        head: vec!["a".to_owned()],
        rows: vec![vec![CsvCell::Figure("\u{2212}0.25".to_owned())]],
    };
    assert_eq!(figures.text(), "a\r\n-0.25\r\n");
}

/// A length on paper, mm, of the scale bar in `svg`, and the length in words that it stands for.
fn scale_bar(svg: &str) -> (f64, String) {
    let document = roxmltree::Document::parse(svg).unwrap();
    let root = document.root_element();
    let mut bars = root
        .descendants()
        .filter(|node| node.attribute("class") == Some("scale-bar"));
    let bar = bars.next().unwrap();
    let data: Vec<f64> = bar
        .attribute("d")
        .unwrap()
        .split(|letter: char| letter.is_alphabetic() || letter == ',' || letter == ' ')
        .filter(|part| !part.is_empty())
        .map(|part| part.parse().unwrap())
        .collect();
    // In the drawing's own units; the file's width in mm over its box says how long one is.
    let width: f64 = root
        .attribute("width")
        .unwrap()
        .trim_end_matches("mm")
        .parse()
        .unwrap();
    let view: Vec<f64> = root
        .attribute("viewBox")
        .unwrap()
        .split_whitespace()
        .map(|part| part.parse().unwrap())
        .collect();
    let words = bar.parent().unwrap().children();
    let words: Vec<&str> = words
        .filter_map(|node| node.first_child()?.text())
        .collect();
    (
        (data[2] - data[0]) * width / view[2],
        words[1].trim().to_owned(),
    )
}

/// The bar: 1 to N exact to 0.1 %. Source: millimetres to the foot and the metre by definition.
#[test]
fn the_scale_bar_is_true() {
    const EXACT: f64 = 0.001;
    let plan = house_with_readings();
    for units in BOTH {
        for scale in [10, 12, 20, 24, 48, 50, 100, 192, 500] {
            let wish = DrawingWish {
                language: ENGLISH,
                units,
                scale,
                tells_scale: true,
            };
            let (on_paper, words) = scale_bar(&drawing_at(&plan, None, wish));
            let stands_for = match units {
                UnitSystem::Si => 1000.0 * words.trim_end_matches(" m").parse::<f64>().unwrap(),
                UnitSystem::UsCustomary => {
                    let (feet, inches) = words.split_once("' ").unwrap();
                    let inches = inches.trim_end_matches('"');
                    304.8 * feet.parse::<f64>().unwrap() + 25.4 * inches.parse::<f64>().unwrap()
                }
            };
            let right = stands_for / f64::from(scale);
            assert!(
                (on_paper / right - 1.0).abs() < EXACT,
                "{on_paper} for {right}"
            );
            assert!(on_paper > 5.0, "{on_paper}");
        }
    }
}

/// A change that was taken stands before and after; one that is offered is among what to do.
#[test]
fn another_run_stands_beside_the_present_one() {
    let before = example("a".to_owned(), "b".to_owned(), "c".to_owned());
    let mut state = State::new(before.clone());
    assert_eq!(state.history.before_reroute(), None);
    let mut run = before.run.clone();
    run.points.pop();
    let taken = Action::TakeReroute(Box::new((run, before.dryer)));
    update(&mut state, taken);
    let title = Action::SetTitle {
        title: "later".to_owned(),
        note: String::new(),
    };
    update(&mut state, title);
    assert_eq!(
        state.history.before_reroute().map(|plan| &**plan),
        Some(&before)
    );
    let job = HandoverJob::of((*state.plan).clone(), None).taken_from(before.clone());
    let units = UnitSystem::Si;
    let sheet = handover_sheet(&job, wish(SheetReading::Customer, units));
    let told = tables(&sheet)[0];
    let was = elbowroom::report::figures(&before).0.totals.unwrap();
    let is = job.run.figures.totals.unwrap();
    assert_eq!(told[0][1], units.airflow(was.airflow).to_string());
    assert_eq!(told[0][3], units.airflow(is.airflow).to_string());
    update(&mut state, Action::Open(Box::new(before)));
    assert_eq!(state.history.before_reroute(), None);
}
