//! Fixed texts.

use super::handover_label::handover_label;
use super::heat_label::heat_label;
use super::shelf_label::shelf_label;
use crate::report::words::{Caution, Label};

#[allow(clippy::too_many_lines, reason = "one line a key")]
pub(in crate::report::words) const fn label(key: Label) -> &'static str {
    match key {
        Label::Heat(key) => heat_label(key),
        Label::Side(key) => super::side_label::side_label(key),
        Label::Handover(key) => handover_label(key),
        Label::Shelf(key) => shelf_label(key),
        Label::GaugeResolution => "Last digit of the gauge",
        Label::GaugeTolerance => "It may be off by",
        Label::ProgramName => "Elbowroom",
        Label::ExampleTitle => "Example: laundry with a chimney breast",
        Label::ExampleNote => "An invented room and run, to be pulled about.",
        Label::ExampleObstacle => "Chimney",
        Label::BlankTitle => "New plan",
        Label::NotFetched => {
            "A part of the program could not be fetched. Check the connection and reload."
        }
        Label::FirstSteps => "New here? Three steps",
        Label::FirstStepDrag => {
            "Drag a ring on the duct: airflow, back pressure and code length follow. Undo takes it back."
        }
        Label::FirstStepRank => {
            "Look for the 1 on the drawing: that part costs the most. Press its line in the ledger to change it."
        }
        Label::FirstStepReroute => {
            "Press Look for reroutes: other runs are laid over yours, each with what it gains."
        }
        Label::FirstStepsClose => "Do not show this again",
        Label::Guide => "Guide",
        Label::OpenExample => "Example",
        Label::OpenBlank => "Start blank",
        Label::OpenFile => "Open file",
        Label::SaveFile => "Save file",
        Label::SaveDrawing => "Save drawing",
        Label::Undo => "Undo",
        Label::Redo => "Redo",
        Label::Units => "Units",
        Label::UnitsUsCustomary => "ft, in. w.c., cfm",
        Label::UnitsSi => "m, Pa, L/s",
        Label::Drawing => "Drawing",
        Label::DrawingKeys => {
            "With the drawing focused: N and P select the next and previous element of the run, T the \
             next wall or other thing (X keeps it while T goes on), arrow keys move what is selected (with Shift by a larger \
             step), L types a length, B makes a bend on a selected leg, Delete removes, C copies, M \
             mirrors, Q turns by a quarter. R draws the run, W an outside wall, I an inside wall, G \
             a window, D a door, A an air intake, O an obstacle, Z a zone: arrow keys move the \
             cursor, Enter sets a point, a typed length and an arrow key draw that far. Escape lets \
             go."
        }
        Label::ZoomIn => "Zoom in",
        Label::ZoomOut => "Zoom out",
        Label::ZoomFit => "Show all",
        Label::Tools => "Drawing tools",
        Label::ToolPick => "Select",
        Label::ToolRun => "Run",
        Label::ToolOutsideWall => "Outside wall",
        Label::ToolInsideWall => "Inside wall",
        Label::ToolWindow => "Window",
        Label::ToolDoor => "Door",
        Label::ToolAirIntake => "Air intake",
        Label::ToolObstacle => "Obstacle",
        Label::ToolZone => "Zone",
        Label::ObstacleClosedArea => "Closed area",
        Label::ObstacleCabinet => "Cabinet",
        Label::ObstacleBeam => "Beam",
        Label::ObstacleStack => "Stack",
        Label::ObstacleFramingAlongX => "Framing, members left to right",
        Label::ObstacleFramingAlongY => "Framing, members up and down",
        Label::ZoneHeated => "Heated room",
        Label::ZoneGarage => "Garage",
        Label::ZoneAttic => "Attic",
        Label::ZoneCrawlSpace => "Crawl space",
        Label::ZoneOutdoors => "Outdoors",
        Label::PictureOpen => "Picture to trace",
        Label::PictureScale => "Scale the picture",
        Label::PictureTooLarge => {
            "The picture is larger than 1.5 MB. Save it smaller and open it again."
        }
        Label::FileNotRead => {
            "The browser could not read the file. Choose it again: it may have been moved or changed."
        }
        Label::NoPicture => {
            "The file is no picture that can be shown here. Save it as PNG, JPEG or WebP and open that."
        }
        Label::DrawDone => "Done",
        Label::DrawLength => "Length from the last point",
        Label::DrawLengthHint => "Enter takes it the way the line points, an arrow key that way.",
        Label::DrawLengthScale => "True length of this line",
        Label::HintPick => {
            "Drag a round corner to move it. Pull a small diamond to make a bend. Press a wall, a window, an obstacle or the dryer to select it."
        }
        Label::HintPlace => "Press where the selected part is to go.",
        Label::HintWall => "Press each corner in turn, or drag. Done ends the wall.",
        Label::HintOpening => "Press the wall where it goes.",
        Label::HintRectangle => "Press one corner and then the opposite one, or drag.",
        Label::HintRun => {
            "Press each corner in turn from the dryer's outlet, or drag. The last one is the termination. Done ends the run."
        }
        Label::HintScale => "Press both ends of a distance that you know, then type its length.",
        Label::ThingCopy => "Copy",
        Label::ThingMirror => "Mirror",
        Label::ThingTurn => "Quarter turn",
        Label::ThingRemove => "Remove",
        Label::PlaceByTap => "Move by pressing",
        Label::SelectMore => "Select more",
        Label::WallLength => "Wall length",
        Label::WallThickness => "Thickness",
        Label::WallOutside => "Outdoors is on its other side",
        Label::OpeningKind => "Opening",
        Label::OpeningOffset => "From the wall's start",
        Label::ThingWidth => "Width, left to right",
        Label::ThingDepth => "Depth, up and down",
        Label::OpeningWidth => "Width along the wall",
        Label::ThingName => "Name",
        Label::ObstacleKind => "What it is",
        Label::Level => "Level",
        Label::LevelCrawlSpace => "Under the floor",
        Label::LevelRoom => "Room",
        Label::LevelCeilingSpace => "Over the ceiling",
        Label::FramingSpacing => "Spacing, centre to centre",
        Label::ZoneTemperature => "Temperature",
        Label::CeilingHeight => "Ceiling height",
        Label::RoofCapHeight => "Height of a cap on the roof, above the floor",
        Label::RoofCapHint => "Empty where no run may go up through the roof",
        Label::DryerTurned => "Turned clockwise (deg)",
        Label::OutletSide => "Outlet on its",
        Label::OutletBack => "back",
        Label::OutletLeft => "left side",
        Label::OutletRight => "right side",
        Label::OutletHeight => "Outlet height above the floor",
        Label::Energy => "Heats by",
        Label::EnergyElectric => "electricity",
        Label::EnergyGas => "gas",
        Label::Stacked => "Stands on the washer",
        Label::Totals => "Clean run",
        Label::Airflow => "Airflow",
        Label::BackPressure => "Back pressure",
        Label::BackPressureHint => "static, at the outlet",
        Label::Velocity => "Velocity",
        Label::CodeLength => "Code length",
        Label::DevelopedLength => "Developed length",
        // Soft hyphens: both stand over narrow columns on a phone.
        Label::EquivalentLength => "Equiva\u{ad}lent length",
        Label::NoAirflowFigure => "no airflow",
        Label::BandPending => "working out the band",
        Label::BandMeaning => {
            "Figures are likely values with a band below: 8 of 10 combinations of the uncertain \
             inputs fall inside it."
        }
        Label::OfflineReady => "Ready offline",
        Label::OfflineWaiting => {
            "A newer version is here. It starts when you want it, or once no page is open."
        }
        Label::OfflineOthers => {
            "Other Elbowroom pages are open. Close them, then start the newer version here."
        }
        Label::OfflineTakeOver => "Start the newer version",
        Label::WhereFrom => "Where this figure comes from",
        Label::MovedMostBy => "Moved most by",
        Label::FiguresFrom => "Where the figures come from",
        Label::FiguresFromHint => {
            "An element's own formula stands in its panel: select it on the drawing or in the ledger."
        }
        Label::AllSources => "All sources",
        Label::Shares => "What the bands hang on",
        Label::SharesMeaning => {
            "How much of a figure's spread (its variance) each uncertain input accounts for by itself, \
             over 2,048 combinations of the inputs. Shares under 1 % are left out; \
             what inputs do together belongs to none of them."
        }
        Label::NoSingleInput => {
            "No single input decides: with a quarter of the combinations another one leads."
        }
        Label::SharePending => "working out the shares",
        Label::NothingUncertain => "Nothing uncertain moves it.",
        Label::Ledger => "Ledger",
        Label::LedgerInRunOrder => "Run order",
        Label::LedgerRanked => "Costliest first",
        Label::LedgerOrder => "Order",
        Label::ColumnElement => "Element",
        Label::ColumnSize => "Size",
        Label::ColumnLoss => "Loss",
        Label::ColumnShare => "Share",
        Label::ColumnCodeDeduction => "Code deduc\u{ad}tion",
        Label::ColumnRank => "Rank",
        Label::ColumnSum => "Whole run",
        Label::BalanceDraught => "Draught of the rise",
        Label::BalanceHouse => "House pressure",
        Label::BalanceVelocityPressure => "Velocity pressure at the outlet",
        Label::Selected => "Selected",
        Label::NothingSelected => {
            "Select a leg, an elbow or the hood on the drawing or in the ledger to change it."
        }
        Label::LegLength => "Leg length, corner to corner",
        Label::LegLengthHint => "Everything after the leg moves along.",
        Label::RiseHere => "Rise here",
        Label::RiseHint => "0 for none; a minus makes a drop.",
        Label::ElbowKind => "Elbow",
        Label::ElbowAfterRiserKind => "Elbow after the riser",
        Label::ElbowSegmented => "Segmented (adjustable)",
        Label::ElbowSmooth => "Smooth",
        Label::ElbowRadius => "Centre-line radius",
        Label::ElbowSharpMitre => "Sharp mitre",
        Label::ElbowBentFlexible => "Flexible duct bent by hand",
        Label::Duct => "Duct of this leg",
        Label::DuctRigid => "Rigid metal",
        Label::DuctSemiRigid => "Semi-rigid corrugated metal",
        Label::DuctFoil => "Foil (transition only)",
        Label::DuctFlatRectangular => "Flat rectangular metal",
        Label::ShortOfFullStretch => "Short of full stretch (%)",
        Label::DuctWidth => "Width inside",
        Label::DuctDepth => "Depth inside",
        Label::EstimateLess => "Estimated: shorter by at most",
        Label::EstimateMore => "Estimated: longer by at most",
        Label::ConcealedLeast => "Concealed elbows, at least",
        Label::ConcealedMost => "Concealed elbows, at most",
        Label::BlockageFreeArea => "Free area at a blockage (%)",
        Label::BlockageHint => "100 for none.",
        Label::LeakArea => "Gap of a leaking joint at its start",
        Label::LeakHint => {
            "0 for a tight joint. A gap of 1/16 in (1.6 mm) all round a 4 in duct is 0.8 in² (5 cm²)."
        }
        Label::EndsInWallBox => "Ends in a recessed wall box",
        Label::MoreAboutLeg => "Estimated, concealed or blocked",
        Label::TerminationKind => "Termination",
        Label::TerminationWallHood => "Wall hood with one flap",
        Label::TerminationLouvredHood => "Louvred hood",
        Label::TerminationRoofCap => "Roof cap",
        Label::TerminationOpenEnd => "Open end (to take a reading)",
        Label::TerminationFreeArea => "Free area of its opening (%)",
        Label::BendMethods => "Smooth elbows of this plan by",
        Label::SetOwnValue => "Use a value of my own",
        Label::OwnLow => "Low",
        Label::OwnLikely => "Likely",
        Label::OwnHigh => "High",
        Label::OwnNote => "Where it comes from",
        Label::OwnUse => "Use these",
        Label::OwnTakeBack => "Go back to the built-in value",
        Label::HousePressure => "House against outdoors",
        Label::MakeUpArea => "Free area for make-up air",
        Label::MakeUpHint => "0 where the room is open to the house.",
        Label::Elevation => "Elevation, unrolled",
        Label::ElevationHint => {
            "The legs in one line, from the side. Drag a round corner up or down to raise or lower \
             the run there."
        }
        Label::ElevationKeys => {
            "With the elevation focused: N and P select the next and previous element, Page Up and \
             Page Down raise and lower the run at the selected corner (with Shift by a larger step), \
             Ctrl+Z undoes, Escape lets go."
        }
        Label::PressureLine => "Pressure line",
        Label::PressureLineTotal => "total",
        Label::PressureLineStatic => "static",
        Label::PressureLineMeaning => {
            "Pressure against outdoors along the developed length, from the dryer's outlet. A fitting \
             makes a step."
        }
        Label::InsertBend => "Make a bend in this leg",
        Label::DeleteBend => "Remove this bend",
        Label::LossCoefficient => "Loss coefficient K",
        Label::Roughness => "Wall roughness",
        Label::SourceHeading => "Source",
        Label::AirAndSite => "Air and site",
        Label::AirDriver => "What moves the air",
        Label::DriverTypicalBlower => "Typical full-size blower (assumed)",
        Label::DriverStated => "An airflow that I state",
        Label::Altitude => "Altitude",
        Label::OutdoorTemperature => "Outdoor temperature",
        Label::ExhaustTemperature => "Exhaust temperature",
        Label::CodeCheck => "Code check",
        Label::RuleSet => "Rule set",
        Label::PathThroughFittings => {
            "The path through elbows counts as length too (the stricter reading)"
        }
        Label::MeasuredLength => "Measured length",
        Label::Deductions => "Deductions for elbows",
        Label::CodeSourceNote => {
            "Editions newer than 2021 were not confirmed. Rows of the table for 8 in radius at 90° and for \
             10 in were read at second hand. The locally adopted code, the dryer maker's instructions \
             and licensed trades decide."
        }
        Label::MakerLength => "Longest exhaust duct",
        Label::MakerElbow45 => "Taken off for a 45° elbow",
        Label::MakerElbow90 => "Taken off for a 90° elbow",
        Label::MakerBackPressure => "Greatest back pressure at the outlet",
        Label::MakerEmpty => "Empty while it is not known.",
        Label::Findings => "Remarks",
        Label::Cautions => "Cautions",
        Label::ScopeNote => {
            "Not covered: booster fans, shafts shared by several dryers, dryers without a vent."
        }
        Label::PlanKept => "The open plan is as it was.",
        Label::Dismiss => "Close",
        Label::Legend => "Share of the loss",
        Label::LegendLow => "little",
        Label::LegendHigh => "most",
        Label::KeepUntouched => "Kept in this browser once you change it",
        Label::KeepSaving => "Saving",
        Label::KeepSaved => "Saved in this browser",
        Label::KeepNotKept => "Changes are not kept",
        Label::KeepRefused => {
            "This browser lets the page store nothing, as in a private window: changes are not kept \
             once the page is closed. Save a file to keep them."
        }
        Label::KeepNoAnswer => {
            "This browser's storage does not answer, so changes are not kept. Close other tabs of \
             this page and reload it, or save a file."
        }
        Label::KeepFull => {
            "This browser's storage is full, so the last changes are not kept. Save a file, or make \
             room: the next change tries again."
        }
        Label::KeepFailed => {
            "This browser could not store the last changes, so they are not kept. Save a file; the \
             next change tries again."
        }
        Label::KeepElsewhere => {
            "This browser holds another plan than this page went on from: another tab may have saved \
             it. So that it is not lost, changes here are not kept. Save a file, reload to open the \
             other plan, or keep this one instead."
        }
        Label::KeepUnreadable => "The plan that this browser holds could not be read.",
        Label::KeepNoRecord => "It is not what this page stores.",
        Label::KeepUnreadableStays => {
            "It is left as it is, and the example is open. Changes are not kept until this plan \
             takes its place."
        }
        Label::KeepDownloadStored => "Download what is stored",
        Label::KeepInstead => "Keep this plan instead",
        Label::More => "More",
        Label::LargeType => "Large type",
        Label::CloseSelected => "Close what is selected",
        Label::Keys => "Keys",
        Label::KeysOnDrawing => "On the drawing, while it has the focus",
        Label::KeysEverywhere => "Everywhere",
        Label::KeysColumnKey => "Key",
        Label::KeysColumnDoes => "What it does",
        Label::KeysCommand => "On a Mac, Command does what Ctrl does.",
        Label::KeyNext => "Select the next element",
        Label::KeyPrevious => "Select the element before",
        Label::KeyMove => "Move the selected corner by an inch, or a centimetre",
        Label::KeyMoveFar => "The same by a foot, or ten centimetres",
        Label::KeyNextThing => "Select the next wall, opening, obstacle, zone or the dryer",
        Label::KeyPreviousThing => "Select the one before",
        Label::KeyKeepThings => "Keep what is selected: T adds the next thing to it",
        Label::KeyAll => "Select everything",
        Label::KeyLength => "Type the selected leg's or riser's length",
        Label::KeyDrawRun => "Draw the run from the outlet",
        Label::KeyPutPoint => "While drawing: set a point at the cursor",
        Label::KeyBend => "Make a bend in the selected leg",
        Label::KeyRemove => "Remove the selected bend",
        Label::KeyLetGo => "Let go of what is selected",
        Label::KeyHelp => "Show these keys",
        Label::KeyTab => "Go to the next button or field",
        Label::KeyTabBack => "Go to the one before",
        Label::KeyPress => "Press a button, tick a box",
        Label::KeyTake => "Take what was typed in a field; press a button",
        Label::KeyClose => "Close these keys, or on a narrow page what is selected",
    }
}

pub(super) fn caution(caution: Caution) -> &'static str {
    match caution {
        Caution::LintBurns => {
            "Lint burns. A dryer's exhaust run is kept clean from lint screen to hood."
        }
        Caution::OutdoorsOnly => {
            "Exhaust goes outdoors and nowhere else, with no screen on the termination, and no \
             plastic or foil duct inside walls."
        }
        Caution::GasExhaust => {
            "A gas dryer's exhaust carries combustion products. If it is blocked, carbon monoxide \
             can enter the house: stop the dryer, ventilate, have it serviced."
        }
        Caution::BeforeOpening => {
            "Disconnect power, and shut the gas, before a dryer is moved or its run opened. Take \
             care at height."
        }
        Caution::CodeDecides => {
            "The locally adopted code, the dryer maker's instructions and licensed trades decide, \
             not this page."
        }
    }
}
