//! All text that people read. The other rooms give message keys with typed arguments; here each
//! language has a folder of exhaustive matches, so a missing message does not compile. What a
//! sentence needs besides words (figures in their units, lists, formulas) stands beside the folders
//! and is the same for all.

mod answer_message;
mod chance;
mod code_label;
mod en;
mod es;
mod first_letter;
mod first_words;
mod formula;
mod handover_label;
mod heat_label;
mod input_figure;
mod label;
mod language;
mod language_label;
mod listing;
mod reroute;
mod rule_figure;
mod shelf_label;
mod side_label;
mod site_label;
mod typed_value;

pub use answer_message::AnswerMessage;
pub use code_label::CodeLabel;
pub use first_words::{FirstWords, fixed_text};
pub use handover_label::{HandoverLabel, HandoverMessage};
pub use heat_label::{HeatFormula, HeatLabel};
pub use label::{ActionName, Caution, Label, Refusal};
pub use language::{Language, Translation, say};
pub use language_label::LanguageLabel;
pub use reroute::RerouteText;
pub use shelf_label::ShelfLabel;
pub use side_label::{SideLabel, SideMessage};
pub use site_label::{CleanGrounds, Placed, SiteLabel, SiteMessage};

use crate::plan::{BendMethod, FileError, Input, Phase, RuleSetId, RuleTopic, Thing};
use crate::report::{ElementFigures, Figures, HeatFigures, Totals};
use crate::rules::{Deciding, DeductionNote, Practice, RuleFinding, Verdict};
use crate::scene::Text;
use crate::source::{Coefficient, Reach, Source, Standing};
use crate::system::{ElementKind, Finding, InsulationUpgrade, Subject};
use crate::units::{Length, LengthTextError, MassFlow};

/// A total whose formula can be shown.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum TotalFormula {
    /// Mean velocity.
    Velocity,
    /// Velocity pressure.
    VelocityPressure,
    /// Back pressure.
    BackPressure,
    /// Airflow.
    Airflow,
    /// Sum of the elements' losses.
    Loss,
    /// What the weight of the air in the run's rise adds.
    Draught,
    /// Physical equivalent length of all elements.
    EquivalentLength,
    /// Length by the code.
    CodeLength,
}

impl TotalFormula {
    /// Every one, in the order in which they are told.
    pub const ALL: [Self; 8] = [
        Self::Airflow,
        Self::Velocity,
        Self::VelocityPressure,
        Self::Loss,
        Self::Draught,
        Self::BackPressure,
        Self::EquivalentLength,
        Self::CodeLength,
    ];
}

/// A message key with its arguments.
#[derive(Debug, Clone, Copy)]
pub enum Message<'a> {
    /// A fixed text of the page.
    Label(Label),
    /// A fixed text of the code check.
    CodeLabel(CodeLabel),
    /// A fixed text about the language of a sheet.
    Language(LanguageLabel),
    /// Something about readings on site.
    Site(SiteMessage<'a>),
    /// Something about two runs side by side, lessons or links.
    Side(SideMessage<'a>),
    /// Something on the handover sheet or its files.
    Handover(HandoverMessage<'a>),
    /// A step that can be undone.
    ActionName(ActionName),
    /// Why an action was not taken.
    Refusal(&'a Refusal),
    /// A caution.
    Caution(Caution),
    /// An element of the run: what it is.
    Element(&'a ElementKind),
    /// An element of the run: how large it is.
    ElementSize(&'a ElementKind),
    /// A text of the drawing.
    Drawing(&'a Text),
    /// The whole run in words, in the order in which the air meets it.
    RunInOrder {
        /// Of the outlet above the floor.
        outlet_height: Length,
        /// Each element, and the rise of a riser.
        elements: &'a [(ElementKind, Option<Length>)],
        /// Of the termination above the floor.
        end_height: Length,
    },
    /// A remark of the analysis.
    Finding(&'a Finding),
    /// How much insulation keeps the wall dry; empty where nothing can be said.
    InsulationUpgrade(&'a InsulationUpgrade),
    /// How a figure of heat and moisture comes about.
    HeatFormula(&'a HeatFigures, HeatFormula),
    /// Water for each hour of a phase.
    Water(MassFlow),
    /// A phase of a drying cycle.
    Phase(Phase),
    /// A verdict.
    Verdict(Verdict),
    /// How a code's table was read.
    DeductionNote(DeductionNote),
    /// The measured length, limit and margin of a length rule.
    CodeLength {
        /// Length and deductions.
        length: Length,
        /// The limit; none where it was not typed.
        limit: Option<Length>,
    },
    /// What is said of suggested runs.
    Reroute(&'a RerouteText),
    /// A rule set by its name.
    RuleSet(RuleSetId),
    /// How an element's loss comes about, with the numbers put in.
    LossFormula(&'a ElementFigures),
    /// How a total comes about, with the numbers put in.
    TotalFormula(&'a Figures, TotalFormula),
    /// A total by its name.
    TotalName(TotalFormula),
    /// How an element's physical equivalent length comes about, with the numbers put in.
    EquivalentLengthFormula(&'a ElementFigures, &'a Totals),
    /// How a band comes about, of so many runs.
    BandFormula {
        /// So many.
        samples: usize,
    },
    /// An uncertain input's share of a figure's spread.
    InputShare {
        /// Which.
        input: Input,
        /// Its share of the variance, 0..1.
        share: f64,
    },
    /// From where to where a code length may lie, because of estimates; that nothing is estimated.
    CodeLengthSpan {
        /// With every estimate at its least.
        least: Length,
        /// With every estimate at its most.
        most: Length,
    },
    /// What the physics rests on that is not published.
    Unpublished(&'a [(Subject, Standing)]),
    /// What a source is for.
    Subject(Subject),
    /// An uncertain input by its name.
    Input(Input),
    /// From where to where an uncertain input is believed to lie.
    InputRange {
        /// Which.
        input: Input,
        /// Its span.
        coefficient: &'a Coefficient,
    },
    /// The input that moves the back pressure most.
    LeadingInput {
        /// Which.
        input: Input,
        /// Its share of the variance, 0..1.
        share: f64,
    },
    /// A rule by what it is about.
    RuleTopic(RuleTopic),
    /// What a rule asks for, in a sentence, with its figure of the chosen set.
    RuleAsks(&'a RuleFinding),
    /// What was measured against what, and by how much; empty where nothing was.
    RuleMeasured(&'a RuleFinding),
    /// What would settle a verdict that is open.
    Deciding {
        /// What decides.
        deciding: &'a Deciding,
        /// What the part in question is, where it is one.
        element: Option<&'a ElementKind>,
    },
    /// Something that the trade does.
    Practice(Practice),
    /// Where code and air part over the whole run.
    Disagreement {
        /// Physical equivalent length of the run.
        air: Length,
        /// Its code length.
        code: Length,
        /// The element that they differ on most by a factor: what it is, its two lengths.
        most: Option<(&'a ElementKind, Length, Length)>,
        /// The costliest that the code does not count, and its physical equivalent length.
        uncounted: Option<(&'a ElementKind, Length)>,
    },
    /// So many times as long.
    Times(f64),
    /// How many of the rules to be looked at on site were seen.
    SeenOnSite {
        /// So many.
        seen: usize,
        /// Of so many.
        of: usize,
    },
    /// How many rules have each verdict.
    FindingsCount {
        /// Met.
        meet: usize,
        /// Not met.
        not: usize,
        /// Open.
        open: usize,
    },
    /// A source in one line.
    Source(&'a Source),
    /// A source's standing.
    Standing(Standing),
    /// A method for smooth elbows and its K at an elbow; none where it does not cover it.
    BendMethod {
        /// The method.
        method: BendMethod,
        /// Its K.
        k: Option<f64>,
    },
    /// Where a value stands against its source's range.
    Reach(Reach),
    /// The 10th to 90th percentile of a figure, both as shown.
    Band {
        /// 10th percentile.
        low: &'a str,
        /// 90th percentile, with its unit.
        high: &'a str,
    },
    /// The new totals, read aloud after a change.
    NewTotals {
        /// Airflow as shown.
        airflow: &'a str,
        /// Back pressure as shown.
        back_pressure: &'a str,
    },
    /// The costliest element, in a sentence.
    Dominant {
        /// Its rank.
        rank: usize,
        /// What it is.
        element: &'a ElementKind,
        /// Its share, 0..1.
        share: f64,
        /// Its physical equivalent length.
        equivalent_length: Length,
        /// What the code deducts for it.
        code_deduction: Option<Length>,
    },
    /// A typed length that was not understood.
    LengthText(&'a LengthTextError),
    /// A typed number that is none.
    NotANumber {
        /// What was typed.
        text: &'a str,
    },
    /// A typed count that is none.
    NotACount {
        /// What was typed.
        text: &'a str,
    },
    /// So many things are selected.
    ThingsSelected(usize),
    /// A thing's kind and name, in one line.
    Thing(&'a Thing<'a>),
    /// A file that could not be read.
    File(&'a FileError),
    /// Something said to other programs.
    Answer(AnswerMessage<'a>),
}

impl<'a> Message<'a> {
    /// The element with the loss of this rank, in a sentence; none where there is none.
    pub fn dominant(figures: &'a Figures, rank: usize) -> Option<Self> {
        let (element, air) = figures.ranked(rank)?;
        Some(Self::Dominant {
            rank,
            element: &element.element,
            share: air.share,
            equivalent_length: air.equivalent_length,
            code_deduction: element.code_deduction,
        })
    }
}
