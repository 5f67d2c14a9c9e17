//! Just enough of Rust's grammar to read source files: names, strings and marks without comments,
//! and what of them is neither attribute nor test.

/// A token and the line that it stands on.
#[derive(Debug, Clone, PartialEq)]
pub struct Token {
    pub kind: Kind,
    pub line: usize,
}

#[derive(Debug, Clone, PartialEq)]
pub enum Kind {
    /// A name, keyword or number.
    Word(String),
    /// What stands between the quotes of a string.
    Text(String),
    /// Anything else, letter by letter.
    Mark(char),
}

impl Token {
    pub fn is_mark(&self, mark: char) -> bool {
        self.kind == Kind::Mark(mark)
    }

    pub fn word(&self) -> Option<&str> {
        match &self.kind {
            Kind::Word(word) => Some(word),
            _ => None,
        }
    }
}

struct Reader<'a> {
    letters: &'a [char],
    at: usize,
    line: usize,
    tokens: Vec<Token>,
}

/// The tokens of `text`, comments left out.
pub fn tokens(text: &str) -> Vec<Token> {
    let letters: Vec<char> = text.chars().collect();
    let mut reader = Reader {
        letters: &letters,
        at: 0,
        line: 1,
        tokens: Vec::new(),
    };
    while reader.at < letters.len() {
        reader.token();
    }
    reader.tokens
}

fn in_word(letter: char) -> bool {
    letter.is_alphanumeric() || letter == '_'
}

impl Reader<'_> {
    fn ahead(&self, by: usize) -> Option<char> {
        self.letters.get(self.at + by).copied()
    }

    fn step(&mut self) -> Option<char> {
        let letter = self.ahead(0)?;
        self.at += 1;
        self.line += usize::from(letter == '\n');
        Some(letter)
    }

    fn push(&mut self, kind: Kind, line: usize) {
        self.tokens.push(Token { kind, line });
    }

    fn token(&mut self) {
        let line = self.line;
        match (self.ahead(0), self.ahead(1)) {
            (Some('/'), Some('/')) => {
                while self.ahead(0).is_some_and(|letter| letter != '\n') {
                    self.step();
                }
            }
            (Some('/'), Some('*')) => self.block_comment(),
            (Some('"'), _) => {
                let text = self.quoted();
                self.push(Kind::Text(text), line);
            }
            (Some('\''), _) => self.letter_or_lifetime(),
            (Some(letter), _) if in_word(letter) => self.word(),
            (Some(letter), _) => {
                self.step();
                if !letter.is_whitespace() {
                    self.push(Kind::Mark(letter), line);
                }
            }
            (None, _) => {}
        }
    }

    fn block_comment(&mut self) {
        let mut depth = 0;
        loop {
            match (self.ahead(0), self.ahead(1)) {
                (Some('/'), Some('*')) => {
                    depth += 1;
                    self.step();
                }
                (Some('*'), Some('/')) => {
                    depth -= 1;
                    self.step();
                }
                (None, _) => return,
                _ => {}
            }
            self.step();
            if depth == 0 {
                return;
            }
        }
    }

    /// A string from its opening quote on; what an escape stands for does not matter here.
    fn quoted(&mut self) -> String {
        self.step();
        let mut text = String::new();
        while let Some(letter) = self.step() {
            match letter {
                '"' => break,
                '\\' => {
                    self.step();
                    text.push('\\');
                }
                letter => text.push(letter),
            }
        }
        text
    }

    fn raw(&mut self, hashes: usize) -> String {
        for _ in 0..=hashes {
            self.step();
        }
        let mut text = String::new();
        while let Some(letter) = self.step() {
            let closes = letter == '"' && (0..hashes).all(|by| self.ahead(by) == Some('#'));
            if closes {
                for _ in 0..hashes {
                    self.step();
                }
                break;
            }
            text.push(letter);
        }
        text
    }

    fn letter_or_lifetime(&mut self) {
        self.step();
        if self.ahead(0) == Some('\\') {
            self.step();
            self.step();
            while self.step().is_some_and(|letter| letter != '\'') {}
        } else if self.ahead(1) == Some('\'') {
            self.step();
            self.step();
        } else {
            while self.ahead(0).is_some_and(in_word) {
                self.step();
            }
        }
    }

    fn word(&mut self) {
        let line = self.line;
        let mut word = String::new();
        while let Some(letter) = self.ahead(0).filter(|letter| in_word(*letter)) {
            word.push(letter);
            self.step();
        }
        let rest = &self.letters[self.at..];
        let hashes = rest.iter().take_while(|letter| **letter == '#').count();
        let opens = self.ahead(hashes) == Some('"');
        match word.as_str() {
            "r" | "br" | "cr" if opens => {
                let text = self.raw(hashes);
                self.push(Kind::Text(text), line);
            }
            "b" | "c" if opens && hashes == 0 => {
                let text = self.quoted();
                self.push(Kind::Text(text), line);
            }
            _ => self.push(Kind::Word(word), line),
        }
    }
}

/// The place after the bracket that closes the one at `open`.
fn after_bracket(tokens: &[Token], open: usize) -> usize {
    let mut depth = 0_usize;
    for (index, token) in tokens.iter().enumerate().skip(open) {
        match token.kind {
            Kind::Mark('(' | '[' | '{') => depth += 1,
            Kind::Mark(')' | ']' | '}') => {
                depth -= 1;
                if depth == 0 {
                    return index + 1;
                }
            }
            _ => {}
        }
    }
    tokens.len()
}

/// The place after the item or statement that begins at `from`: after its semicolon, or after its
/// braces.
fn after_item(tokens: &[Token], mut at: usize) -> usize {
    while let Some(token) = tokens.get(at) {
        match token.kind {
            Kind::Mark(';') => return at + 1,
            Kind::Mark('{') => return after_bracket(tokens, at),
            Kind::Mark('(' | '[') => at = after_bracket(tokens, at),
            _ => at += 1,
        }
    }
    at
}

/// The place after the attribute at `at`, and whether it is `#[cfg(test)]`; none where no attribute
/// stands there.
fn attribute(tokens: &[Token], at: usize) -> Option<(usize, bool)> {
    let mut open = at + 1;
    if tokens.get(open).is_some_and(|token| token.is_mark('!')) {
        open += 1;
    }
    let begins = tokens.get(at)?.is_mark('#') && tokens.get(open)?.is_mark('[');
    if !begins {
        return None;
    }
    let end = after_bracket(tokens, open);
    let words: Vec<_> = tokens[open..end].iter().filter_map(Token::word).collect();
    Some((end, words == ["cfg", "test"]))
}

/// `tokens` without attributes, and without what only a test build has.
pub fn plain_code(tokens: &[Token]) -> Vec<Token> {
    let mut plain = Vec::new();
    let mut at = 0;
    while at < tokens.len() {
        if let Some((after, test)) = attribute(tokens, at) {
            at = after;
            if test {
                while let Some((after, _)) = attribute(tokens, at) {
                    at = after;
                }
                at = after_item(tokens, at);
            }
        } else {
            plain.push(tokens[at].clone());
            at += 1;
        }
    }
    plain
}

/// `tokens` without what is declared by the macro called `name`, written with braces.
pub fn without_declared_by(tokens: &[Token], name: &str) -> Vec<Token> {
    let mut rest = Vec::new();
    let mut at = 0;
    while at < tokens.len() {
        let is_mark = |ahead: usize, mark| {
            let token: Option<&Token> = tokens.get(at + ahead);
            token.is_some_and(|token| token.is_mark(mark))
        };
        if tokens[at].word() == Some(name) && is_mark(1, '!') && is_mark(2, '{') {
            at = after_bracket(tokens, at + 2);
        } else {
            rest.push(tokens[at].clone());
            at += 1;
        }
    }
    rest
}

#[test]
fn comments_strings_and_tests_are_told_apart() {
    let text = r##"
        // a comment
        /* another /* inside */ one */
        #[derive(Debug)]
        fn live<'a>(x: &'a str) -> char { let y = "text \" quoted"; '"' }
        #[cfg(test)]
        #[allow(clippy::panic)]
        mod tests { const X: &str = r#"raw " text"#; }
        source! { static S { title: "t; u" } }
        const N: usize = 2;
    "##;
    let plain = plain_code(&tokens(text));
    let texts: Vec<_> = plain
        .iter()
        .filter_map(|token| match &token.kind {
            Kind::Text(text) => Some((text.as_str(), token.line)),
            _ => None,
        })
        .collect();
    assert_eq!(texts, [("text \\ quoted", 5), ("t; u", 9)]);
    let rest = without_declared_by(&plain, "source");
    let words: Vec<_> = rest.iter().filter_map(Token::word).collect();
    assert_eq!(
        words,
        [
            "fn", "live", "x", "str", "char", "let", "y", "const", "N", "usize", "2"
        ]
    );
}
