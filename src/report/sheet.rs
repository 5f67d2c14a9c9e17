//! A sheet for people as plain data: what is said, in the order in which it is read, before it is
//! written as HTML.

/// A sheet.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Sheet {
    /// Its parts, from the top.
    pub parts: Vec<SheetPart>,
}

/// One part of a sheet. Every text is plain: whatever a person typed stands in it as it was typed.
#[derive(Debug, Clone, PartialEq)]
pub enum SheetPart {
    /// The heading of the sheet.
    Title(String),
    /// The heading of a section, which goes with what follows it.
    Heading(String),
    /// A paragraph.
    Paragraph(String),
    /// A paragraph in small type.
    Fine(String),
    /// A list.
    List(Vec<String>),
    /// A list in small type.
    FineList(Vec<String>),
    /// A list whose order matters.
    Steps(Vec<String>),
    /// A table.
    Table(SheetTable),
    /// A drawing that the project wrote itself.
    Drawing(SheetDrawing),
    /// Pictures with their names.
    Pictures(Vec<SheetPicture>),
    /// A line to write on, by its name, with what was typed there.
    Blank(Vec<(String, String)>),
}

/// A table; a row is as long as its head.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct SheetTable {
    /// The columns' names.
    pub head: Vec<String>,
    /// The rows.
    pub rows: Vec<Vec<String>>,
    /// The columns that hold figures, which stand flush right.
    pub figures: Vec<usize>,
    /// Whether it is in small type.
    pub is_fine: bool,
}

/// A drawing.
#[derive(Debug, Clone, PartialEq)]
pub struct SheetDrawing {
    /// The text of an SVG element.
    pub svg: String,
    /// What it shows, for who cannot see it.
    pub name: String,
    /// Whether text has room beside it.
    pub is_narrow: bool,
}

/// A picture.
#[derive(Debug, Clone, PartialEq)]
pub struct SheetPicture {
    /// What it is.
    pub name: String,
    /// Its media type.
    pub kind: &'static str,
    /// Its bytes in Base64.
    pub data_base64: String,
}

impl Sheet {
    /// Adds a part.
    pub fn push(&mut self, part: SheetPart) {
        self.parts.push(part);
    }

    /// Adds a heading.
    pub fn heading(&mut self, text: String) {
        self.push(SheetPart::Heading(text));
    }

    /// Adds a paragraph, if it says anything.
    pub fn paragraph(&mut self, text: String) {
        if !text.is_empty() {
            self.push(SheetPart::Paragraph(text));
        }
    }

    /// Adds a list, if anything is in it.
    pub fn list(&mut self, lines: impl IntoIterator<Item = String>) {
        let lines: Vec<String> = lines.into_iter().filter(|line| !line.is_empty()).collect();
        if !lines.is_empty() {
            self.push(SheetPart::List(lines));
        }
    }

    /// Adds a table, if it has rows.
    pub fn table(&mut self, head: Vec<String>, figures: Vec<usize>, rows: Vec<Vec<String>>) {
        if !rows.is_empty() {
            self.push(SheetPart::Table(SheetTable {
                head,
                rows,
                figures,
                is_fine: false,
            }));
        }
    }

    /// Adds a table in small type.
    pub fn fine_table(&mut self, head: Vec<String>, rows: Vec<Vec<String>>) {
        self.push(SheetPart::Table(SheetTable {
            head,
            rows,
            figures: Vec::new(),
            is_fine: true,
        }));
    }
}
