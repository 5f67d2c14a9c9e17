//! The handover: whom the sheet is for, what is typed on it, a look at it, printing and files.

use super::handover_fields::{HandoverTexts, StockField};
use super::handover_files::HandoverFiles;
use super::handover_preview::Preview;
use super::paper_protocol::{PaperLanguage, PaperWish};
use super::radio_choice::RadioChoice;
use super::store::{Store, label_text};
use crate::report::Paper;
use crate::report::handover::SheetReading;
use crate::report::words::{HandoverLabel, Label, LanguageLabel, Message};
use leptos::prelude::*;

/// How the sheet is wanted: of this page, not of the plan.
#[derive(Clone, Copy)]
pub(super) struct Wishes {
    reading: RwSignal<SheetReading>,
    paper: RwSignal<Paper>,
    language: RwSignal<PaperLanguage>,
}

impl Wishes {
    /// The wish as it is now; follows it.
    pub fn get(self, store: Store) -> PaperWish {
        PaperWish {
            reading: self.reading.get(),
            paper: self.paper.get(),
            language: self.language.get(),
            units: store.units.get(),
        }
    }

    /// The wish as it is now, looked at once.
    pub fn now(self, store: Store) -> PaperWish {
        untrack(|| self.get(store))
    }
}

/// A text of the panel.
pub(super) fn handover_text(label: HandoverLabel) -> String {
    label_text(Label::Handover(label))
}

#[component]
pub(super) fn HandoverPanel() -> impl IntoView {
    let wishes = Wishes {
        reading: RwSignal::new(SheetReading::default()),
        paper: RwSignal::new(Paper::default()),
        language: RwSignal::new(PaperLanguage::English),
    };
    let store = expect_context::<Store>();
    let readings = vec![
        (
            SheetReading::Customer,
            handover_text(HandoverLabel::Customer),
        ),
        (SheetReading::Trade, handover_text(HandoverLabel::Trade)),
    ];
    let papers = vec![
        (Paper::Letter, handover_text(HandoverLabel::Letter)),
        (Paper::A4, handover_text(HandoverLabel::A4)),
    ];
    let languages = PaperLanguage::ALL.map(|language| {
        let name = match language {
            PaperLanguage::English => LanguageLabel::English,
            PaperLanguage::Spanish => LanguageLabel::Spanish,
        };
        (language, store.say(Message::Language(name)))
    });
    view! {
        <section class="panel handover" aria-labelledby="handover-title">
            <h2 id="handover-title">{handover_text(HandoverLabel::Heading)}</h2>
            <p class="fine">{handover_text(HandoverLabel::Hint)}</p>
            {choice("handover-reading", HandoverLabel::ReadBy, readings, wishes.reading)}
            {choice("handover-paper", HandoverLabel::Paper, papers, wishes.paper)}
            {choice("handover-language", HandoverLabel::Language, languages.to_vec(), wishes.language)}
            <HandoverTexts/>
            <StockField/>
            <Preview wishes/>
            <HandoverFiles wishes/>
        </section>
    }
}

fn choice<T: Copy + PartialEq + Send + Sync + 'static>(
    name: &'static str,
    label: HandoverLabel,
    choices: Vec<(T, String)>,
    chosen: RwSignal<T>,
) -> impl IntoView {
    let set = Callback::new(move |choice| chosen.set(choice));
    view! {
        <RadioChoice name legend=handover_text(label) shows_legend=true choices chosen=chosen.into() set/>
    }
}
