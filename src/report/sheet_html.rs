//! A sheet as HTML: the inside of an element, and a whole file that is printed as it is. Whatever was
//! typed is inert in both.

use super::sheet::{Sheet, SheetPart, SheetTable};
use super::words::Language;
use std::fmt::Write;

/// The style of the sheets, on the page and in the file.
const STYLE: &str = include_str!("../../styles/sheet.css");
/// Nothing is fetched and nothing runs, whatever stands in the file.
const POLICY: &str = "default-src 'none'; style-src 'unsafe-inline'; img-src data:";

/// Paper that a sheet is laid out for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, serde::Serialize, serde::Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Paper {
    /// 8 1/2 by 11 in.
    #[default]
    Letter,
    /// 210 by 297 mm.
    A4,
}

impl Paper {
    /// The class of a sheet on this paper.
    pub const fn class(self) -> &'static str {
        match self {
            Self::Letter => "paper paper-letter",
            Self::A4 => "paper paper-a4",
        }
    }

    /// Width and height, mm.
    pub const fn size(self) -> (f64, f64) {
        match self {
            Self::Letter => (215.9, 279.4),
            Self::A4 => (210.0, 297.0),
        }
    }
}

/// The sheet as the inside of an HTML element; empty where nothing stands on it.
pub fn sheet_html(sheet: &Sheet) -> String {
    let mut html = Html(String::new());
    for part in &sheet.parts {
        html.part(part);
    }
    html.0
}

/// The sheet as a whole file, printed as it is: own style, no script, nothing fetched.
pub fn sheet_file(sheet: &Sheet, title: &str, paper: Paper, language: Language) -> String {
    let mut html = Html(String::new());
    let _ = write!(
        html.0,
        "<!DOCTYPE html>\n<html lang=\"{}\">\n<head>\n<meta charset=\"utf-8\">\n\
         <meta http-equiv=\"Content-Security-Policy\" content=\"{POLICY}\">\n\
         <meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n",
        language.tag()
    );
    html.put("title", title);
    let _ = write!(
        html.0,
        "\n<style>\n{STYLE}</style>\n</head>\n<body>\n<main class=\"{}\">\n",
        paper.class()
    );
    for part in &sheet.parts {
        html.part(part);
        html.0.push('\n');
    }
    html.0.push_str("</main>\n</body>\n</html>\n");
    html.0
}

/// `text` with what HTML would take for its own, and without signs that no text holds.
fn inert(text: &str) -> String {
    let mut safe = String::with_capacity(text.len());
    for letter in text.chars() {
        match letter {
            '&' => safe.push_str("&amp;"),
            '<' => safe.push_str("&lt;"),
            '>' => safe.push_str("&gt;"),
            '"' => safe.push_str("&quot;"),
            '\'' => safe.push_str("&#39;"),
            '\n' | '\t' => safe.push(letter),
            other if other.is_control() || matches!(other, '\u{fffe}' | '\u{ffff}') => {
                safe.push(' ');
            }
            other => safe.push(other),
        }
    }
    safe
}

struct Html(String);

// Writing into a string cannot fail.
impl Html {
    /// An element with `text` in it, which it makes inert. A typed text keeps to its own direction.
    fn put(&mut self, element: &str, text: &str) {
        let name = element.split_whitespace().next().unwrap_or(element);
        let _ = write!(self.0, "<{element}>{}</{name}>", inert(text));
    }

    fn part(&mut self, part: &SheetPart) {
        match part {
            SheetPart::Title(text) => self.put("h1", text),
            SheetPart::Heading(text) => self.put("h2", text),
            SheetPart::Paragraph(text) => self.put("p dir=\"auto\"", text),
            SheetPart::Fine(text) => self.put("p class=\"paper-fine\" dir=\"auto\"", text),
            SheetPart::List(lines) => self.list("ul", "ul", lines),
            SheetPart::FineList(lines) => self.list("ul class=\"paper-fine\"", "ul", lines),
            SheetPart::Steps(lines) => self.list("ol", "ol", lines),
            SheetPart::Table(table) => self.table(table),
            SheetPart::Drawing(drawing) => {
                let name = inert(&drawing.name);
                let class = if drawing.is_narrow {
                    "paper-drawing paper-narrow"
                } else {
                    "paper-drawing"
                };
                let _ = write!(
                    self.0,
                    "<div class=\"{class}\" role=\"img\" aria-label=\"{name}\">{}</div>",
                    drawing.svg
                );
            }
            SheetPart::Pictures(pictures) => {
                self.0.push_str("<div class=\"paper-pictures\">");
                for picture in pictures {
                    let name = inert(&picture.name);
                    // Base64 holds no letter of HTML's own; what is read and edited is checked for it.
                    let data = inert(&picture.data_base64);
                    let _ = write!(
                        self.0,
                        "<figure><img alt=\"{name}\" src=\"data:{};base64,{data}\">\
                         <figcaption>{name}</figcaption></figure>",
                        picture.kind
                    );
                }
                self.0.push_str("</div>");
            }
            SheetPart::Blank(lines) => {
                self.0.push_str("<dl class=\"paper-blanks\">");
                for (name, text) in lines {
                    let _ = write!(
                        self.0,
                        "<div><dt>{}</dt><dd dir=\"auto\">{}</dd></div>",
                        inert(name),
                        inert(text)
                    );
                }
                self.0.push_str("</dl>");
            }
        }
    }

    fn list(&mut self, opening: &str, name: &str, lines: &[String]) {
        let _ = write!(self.0, "<{opening}>");
        for line in lines {
            self.put("li dir=\"auto\"", line);
        }
        let _ = write!(self.0, "</{name}>");
    }

    fn table(&mut self, table: &SheetTable) {
        let class = |column: usize| {
            if table.figures.contains(&column) {
                " class=\"paper-figure\""
            } else {
                ""
            }
        };
        self.0.push_str(if table.is_fine {
            "<table class=\"paper-fine\"><thead><tr>"
        } else {
            "<table><thead><tr>"
        });
        for (column, name) in table.head.iter().enumerate() {
            let _ = write!(
                self.0,
                "<th scope=\"col\"{}>{}</th>",
                class(column),
                inert(name)
            );
        }
        self.0.push_str("</tr></thead><tbody>");
        for row in &table.rows {
            self.0.push_str("<tr>");
            for (column, cell) in row.iter().enumerate() {
                let _ = write!(self.0, "<td{}>{}</td>", class(column), inert(cell));
            }
            self.0.push_str("</tr>");
        }
        self.0.push_str("</tbody></table>");
    }
}
