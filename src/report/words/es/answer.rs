//! What is said to other programs and at a terminal.

use crate::report::answer::{Unanswered, WishError};
use crate::report::words::AnswerMessage;

pub(super) fn answer(message: AnswerMessage<'_>) -> String {
    match message {
        AnswerMessage::Unanswered(error) => unanswered(error),
        AnswerMessage::Wish(error) => wish(error),
        AnswerMessage::Progress { done, of, refused } => progress(done, of, refused),
    }
}

fn unanswered(error: &Unanswered) -> String {
    match error {
        Unanswered::NoVisit => "El plano no tiene ninguna visita con lecturas.".to_owned(),
        Unanswered::NoSuchVisit { id } => {
            format!("El plano no tiene ninguna visita llamada “{id}”.")
        }
        Unanswered::NoPlanInside => {
            "La carpeta no contiene ningún archivo que termine en .json o .jsonl.".to_owned()
        }
    }
}

fn wish(error: &WishError) -> String {
    match error {
        WishError::Field { path, detail } => format!("En {path}: {detail}."),
        WishError::OutOfRange {
            path,
            value,
            least,
            greatest,
        } => format!("{path} es {value}; puede ir de {least} a {greatest}."),
    }
}

fn progress(done: usize, of: Option<usize>, refused: usize) -> String {
    let all = of.map_or_else(String::new, |of| format!(" de {of}"));
    let without = match refused {
        0 => String::new(),
        some => format!(", {some} sin respuesta"),
    };
    format!("{done}{all} planos{without}")
}
