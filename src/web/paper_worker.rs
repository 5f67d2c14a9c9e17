//! The worker's side of what is made for paper and files.

use super::paper_protocol::{OtherAsk, PAPER_PROTOCOL, PaperAnswer, PaperAsk, PaperKind};
use crate::report::cut_list::cut_list;
use crate::report::handover::{HandoverJob, SheetWish, handover_sheet};
use crate::report::words::Language;
use crate::report::{
    VisitSheet, cut_list_csv, drawing_svg, heat_svg, ledger_csv, pressure_svg, sheet_file,
    sheet_html, visit_sheet,
};

/// Makes what is asked for; none where the asking is of another version.
pub(super) fn answer(ask: PaperAsk) -> Option<PaperAnswer> {
    let (paper_protocol, id) = (ask.paper_protocol, ask.id);
    (paper_protocol == PAPER_PROTOCOL).then(|| PaperAnswer {
        paper_protocol,
        id,
        text: made(ask),
    })
}

fn made(ask: PaperAsk) -> Option<String> {
    let (asked, what) = (ask.wish, ask.what);
    let language = Language::of_tag(asked.language.tag())?;
    let units = asked.units;
    let wish = SheetWish {
        reading: asked.reading,
        paper: asked.paper,
        language,
        units,
    };
    let job = HandoverJob::of(ask.plan, ask.visit);
    let job = match ask.other {
        OtherAsk::None => job,
        OtherAsk::Before(before) => job.taken_from(*before),
        OtherAsk::Offered(suggestion) => job.with_offer(&suggestion),
    };
    let run = &job.run;
    match what {
        PaperKind::Sheet => Some(sheet_html(&handover_sheet(&job, wish))),
        PaperKind::SheetFile => {
            let sheet = handover_sheet(&job, wish);
            Some(sheet_file(&sheet, &run.plan.title, wish.paper, language))
        }
        PaperKind::Visit => {
            let found = job.visit.as_ref()?;
            Some(sheet_html(&visit_sheet(&VisitSheet {
                plan: &run.plan,
                figures: &run.figures,
                visit: found.visit,
                diagnosis: found.diagnosis.as_ref(),
                clean: &found.clean,
                language,
                units,
            })))
        }
        PaperKind::Drawing => Some(drawing_svg(&run.plan, run.ledger(), language, units)),
        PaperKind::Pressure => pressure_svg(run, job.visit.as_ref(), language, units),
        PaperKind::Heat => heat_svg(run, language, units),
        PaperKind::Ledger => Some(ledger_csv(run, language, units)),
        PaperKind::CutList => {
            let list = cut_list(&run.plan, &run.figures);
            Some(cut_list_csv(&list, language, units))
        }
    }
}
