//! A job in a link: what goes in comes out, and whatever else ends in an error that says what to do.
//! Source: that writing and reading undo each other is the link's promise; the compressed form is held
//! against another program's by the browser's tests.

use crate::random_plan;
use crate::seeded;
use elbowroom::plan::{
    LONGEST_LINK, LinkError, Plan, example, is_link, read_link, validate, write_link,
};
use elbowroom::report::words::{Language, Message, SideMessage, say};
use elbowroom::units::UnitSystem;
use proptest::prelude::*;

const ADDRESS: &str = "https://a.page/of/ours/";

fn fragment(link: &str) -> &str {
    link.split_once('#').unwrap().1
}

fn said(error: &LinkError) -> String {
    let message = Message::Side(SideMessage::Link(error));
    say(Language::English, UnitSystem::UsCustomary, message)
}

fn the_example() -> Plan {
    example("Attic".into(), "A note".into(), "Chimney".into())
}

/// Any job: a random run with a title and a note of any letters.
fn job() -> impl Strategy<Value = Plan> {
    let plan = prop_oneof![
        random_plan::with_blower(),
        random_plan::with_stated_airflow()
    ];
    (plan, ".{0,60}", ".{0,200}").prop_map(|(mut plan, title, note)| {
        (plan.title, plan.note) = (title, note);
        plan
    })
}

/// A thousand of them with `ELBOWROOM_FULL=1`.
#[test]
fn every_job_comes_out_of_its_link_as_it_went_in() {
    seeded::check(100, &job(), |plan| {
        let link = write_link(&plan, ADDRESS);
        let link = link.map_err(|error| TestCaseError::fail(said(&error)))?;
        prop_assert!(link.len() <= LONGEST_LINK, "{} letters", link.len());
        prop_assert!(link.starts_with(ADDRESS));
        let sent = fragment(&link);
        prop_assert!(is_link(sent));
        // RFC 3986, section 3.5: letters of a fragment that nothing on the way has to change.
        let is_plain = |letter: char| letter.is_ascii_alphanumeric() || "-._~".contains(letter);
        prop_assert!(sent.chars().all(is_plain), "{}", sent);
        prop_assert_eq!(read_link(sent), Ok(plan));
        Ok(())
    });
}

/// What happens to a link on its way.
#[derive(Debug, Clone)]
enum Harm {
    /// One letter becomes another that links have.
    Change(char),
    /// One letter becomes one that no link has.
    Strange(char),
    Insert(char),
    Remove,
    Cut,
    Repeat,
    Swap,
    Append(&'static str),
}

fn harm() -> impl Strategy<Value = Harm> {
    let usual = || prop::sample::select("ABCXYZabcxyz0189-_".chars().collect::<Vec<_>>());
    prop_oneof![
        4 => usual().prop_map(Harm::Change),
        1 => prop::sample::select(vec![' ', '\n', '%', '=', '+', '/', '\u{200b}', '\u{202e}', '\u{1f600}', '\0'])
            .prop_map(Harm::Strange),
        2 => usual().prop_map(Harm::Insert),
        2 => Just(Harm::Remove),
        3 => Just(Harm::Cut),
        1 => Just(Harm::Repeat),
        1 => Just(Harm::Swap),
        1 => prop::sample::select(vec!["A", "AAAA", "...", ">", "&utm=1"]).prop_map(Harm::Append),
    ]
}

fn harmed(sent: &str, at: prop::sample::Index, harm: &Harm) -> String {
    let mut letters: Vec<char> = sent.chars().collect();
    let at = at.index(letters.len());
    match harm {
        Harm::Change(letter) | Harm::Strange(letter) => letters[at] = *letter,
        Harm::Insert(letter) => letters.insert(at, *letter),
        Harm::Remove => {
            letters.remove(at);
        }
        Harm::Cut => letters.truncate(at),
        Harm::Repeat => letters.extend_from_within(at..),
        Harm::Swap => {
            let other = (at + 1).min(letters.len() - 1);
            letters.swap(at, other);
        }
        Harm::Append(text) => letters.extend(text.chars()),
    }
    letters.into_iter().collect()
}

/// Two hundred of them with `ELBOWROOM_FULL=1`. A link that was changed never opens as another job.
#[test]
fn every_harmed_link_ends_in_a_message_that_says_what_to_do() {
    let cases = (job(), any::<prop::sample::Index>(), harm());
    let harmless = core::cell::Cell::new(0_u32);
    seeded::check(20, &cases, |(plan, at, harm)| {
        let link = write_link(&plan, ADDRESS).unwrap();
        let sent = fragment(&link);
        let arrived = harmed(sent, at, &harm);
        if arrived == sent {
            harmless.set(harmless.get() + 1);
            return Ok(());
        }
        let Err(error) = read_link(&arrived) else {
            return Err(TestCaseError::fail(format!("{harm:?} was not noticed")));
        };
        let message = said(&error);
        prop_assert!(
            message.len() > 40 && message.contains("file"),
            "{}",
            message
        );
        prop_assert!(!message.contains("LinkError"), "{}", message);
        Ok(())
    });
    assert!(harmless.get() < 5, "{} changed nothing", harmless.get());
}

/// A fault, the link that has it, and what the error must be.
type Fault = (&'static str, String, fn(&LinkError) -> bool);

#[test]
fn each_fault_is_called_by_its_name() {
    let link = write_link(&the_example(), ADDRESS).unwrap();
    let sent = fragment(&link);
    let packed = sent.strip_prefix("job-1.").unwrap();
    let cases: [Fault; 8] = [
        ("nothing", String::new(), |error| {
            *error == LinkError::NotAJob
        }),
        ("another page's", "section-3".into(), |error| {
            *error == LinkError::NotAJob
        }),
        ("a mark alone", "job-".into(), |error| {
            matches!(error, LinkError::CutShort { .. })
        }),
        (
            "a newer one",
            format!("job-2.{packed}"),
            |error| matches!(error, LinkError::UnknownVersion { found, .. } if found == "2"),
        ),
        ("the first half", sent[..sent.len() / 2].into(), |error| {
            matches!(error, LinkError::CutShort { .. })
        }),
        (
            "a blank in it",
            format!("job-1.{} {}", &packed[..9], &packed[9..]),
            |error| matches!(error, LinkError::StrangeLetter { after: 9 }),
        ),
        (
            "a letter changed",
            {
                let at = sent.len() / 2;
                let other = if &sent[at..=at] == "A" { "B" } else { "A" };
                format!("{}{other}{}", &sent[..at], &sent[at + 1..])
            },
            |error| {
                matches!(
                    error,
                    LinkError::Damaged | LinkError::CutShort { .. } | LinkError::TooLarge { .. }
                )
            },
        ),
        (
            "endless",
            "job-1.".to_owned() + &"A".repeat(LONGEST_LINK),
            |error| matches!(error, LinkError::TooLong { letters, limit: LONGEST_LINK } if *letters > LONGEST_LINK),
        ),
    ];
    for (what, sent, is_right) in cases {
        let error = read_link(&sent).expect_err(what);
        assert!(is_right(&error), "{what}: {error:?}");
    }
}

/// Noughts pack a thousand to one (RFC 1951's longest match is 258 bytes), so a short link could fill a
/// memory.
#[test]
fn a_short_link_that_unfolds_to_megabytes_is_refused() {
    use base64::Engine;
    let packed = miniz_oxide::deflate::compress_to_vec_zlib(&vec![b' '; 4 << 20], 9);
    let packed = base64::engine::general_purpose::URL_SAFE_NO_PAD.encode(packed);
    let link = format!("job-1.{packed}");
    assert!(link.len() < LONGEST_LINK, "{}", link.len());
    let error = read_link(&link).unwrap_err();
    assert!(matches!(error, LinkError::TooLarge { .. }), "{error:?}");
}

#[test]
fn a_whole_link_that_holds_no_plan_says_so() {
    use base64::Engine;
    for inside in [
        "{}",
        "no plan",
        "{\"format\":\"elbowroom-plan\",\"version\":1}",
    ] {
        let packed = miniz_oxide::deflate::compress_to_vec_zlib(inside.as_bytes(), 9);
        let packed = base64::engine::general_purpose::URL_SAFE_NO_PAD.encode(packed);
        let error = read_link(&format!("job-1.{packed}")).unwrap_err();
        assert!(matches!(error, LinkError::Plan(_)), "{inside}: {error:?}");
    }
}

#[test]
fn a_job_too_long_for_a_link_is_offered_as_a_file_and_pictures_stay_behind() {
    let mut plan = the_example();
    // Letters without a pattern do not pack.
    let mut last = 1_u32;
    let mut next = || {
        last = last.wrapping_mul(1_664_525).wrapping_add(1_013_904_223);
        char::from_u32(0x4e00 + (last >> 16) % 20_000).unwrap()
    };
    plan.note = core::iter::repeat_with(&mut next).take(10_000).collect();
    let error = write_link(&plan, ADDRESS).unwrap_err();
    assert!(matches!(error, LinkError::TooLong { letters, .. } if letters > LONGEST_LINK));
    assert!(said(&error).contains("Send the job's file"));

    let mut plan = the_example();
    plan.picture = Some(elbowroom::plan::Picture {
        coding: elbowroom::plan::PictureCoding::Png,
        data_base64: "iVBORw0KGgo=".repeat(1000).replace('=', "A").into(),
        x_m: 0.0,
        y_m: 0.0,
        width: elbowroom::units::Length::from_metres(1.0),
        depth: elbowroom::units::Length::from_metres(1.0),
    });
    assert!(plan.has_pictures());
    let link = write_link(&plan, ADDRESS).unwrap();
    let opened = read_link(fragment(&link)).unwrap();
    assert_eq!(opened, plan.without_pictures());
    assert!(!opened.has_pictures());
    assert_eq!(validate(&opened), Ok(()));
}

/// What people typed is the same text at the other end, whatever it would mean elsewhere.
#[test]
fn hostile_texts_come_out_as_texts() {
    for text in [
        "<script>alert(1)</script>",
        "=cmd|' /C calc'!A1",
        "\u{202e}right to left",
        "\u{1f9fa}\u{200d}\"'&#x3c;",
        &"x".repeat(10_000),
    ] {
        let mut plan = the_example();
        plan.title = text.to_owned();
        let link = write_link(&plan, ADDRESS).unwrap();
        assert_eq!(read_link(fragment(&link)).unwrap().title, text);
    }
}
