// The types of elbowroom.js. Each field's name carries its SI unit; `plan.d.ts` is made of the schema
// of the plan's file at build.

import type { Dryer, Duct, Elbow, ObstacleKind, Opening, Plan, Run, Termination } from './plan.js';

export type { Plan } from './plan.js';

/** A plan as an object, or the text of its file. */
export type PlanOrText = Plan | string;

/** What every function throws: the message is a sentence for a person. */
export interface PlanError extends Error {
  /** The field at fault, such as `run.points[2].x_m`; `.` is the whole. Left out where it is none. */
  path?: string;
}

export function figures(plan: PlanOrText, options?: { bands?: false }): Figures;
export function figures(plan: PlanOrText, options: { bands: boolean }): FiguresWithBands;
export function check(plan: PlanOrText): Check;
export function reroute(plan: PlanOrText, options?: RerouteOptions): Reroute;
export function diagnose(plan: PlanOrText, options?: { visit?: string | null }): VisitMeaning;
/** The example that the page opens with. Invented. */
export function example(): Plan;
/** The handover sheet as one HTML file, with what a visit came to where there is one. */
export function sheet(plan: PlanOrText, options?: SheetOptions): string;
export function view(plan: PlanOrText, options?: { units?: Units }): View;

export type Units = 'us' | 'si';

export interface SheetOptions {
  /** A visit's id; the newest where it is left out. */
  visit?: string | null;
  units?: Units;
  reading?: 'customer' | 'trade';
  paper?: 'letter' | 'a4';
  /** Spanish awaits review by a native speaker. */
  language?: 'en' | 'es';
}

/** From where to where a figure lies, 10th to 90th percentile. */
export interface Band {
  low: number;
  high: number;
}

export type Node = 'outlet' | { point: string };

/** An element of the run: the part at a point of it. */
export interface ElementId {
  node: Node;
  part:
    | 'leg' | 'elbow' | 'riser' | 'elbow_after_riser' | 'area_change' | 'area_change_into_riser'
    | 'blockage' | 'concealed_elbows' | 'leak' | 'wall_box' | 'termination' | 'make_up_air';
}

export type Standing = 'published' | 'second_hand' | 'common_practice' | 'assumption' | 'memory' | 'typed';

/** Where a number comes from. */
export interface Source {
  title: string;
  edition: string;
  locator: string;
  standing: Standing;
}

/** A number that is not known well. */
export interface Coefficient {
  low: number;
  likely: number;
  high: number;
  source: Source;
}

export interface Figures {
  totals: Totals | null;
  elements: ElementFigures[];
  code: CodeFigures;
  code_check: CodeCheck;
  unpublished: [string, Standing][];
  heat?: Heat;
  findings: Finding[];
}

export interface FiguresWithBands extends Figures {
  bands: { airflow: Band; back_pressure: Band; velocity: Band; loss: Band; equivalent_length: Band } | null;
}

export interface Totals {
  airflow_m3_per_s: number;
  airflow_at_end_m3_per_s: number;
  back_pressure_pa: number;
  total_pressure_pa: number;
  velocity_pressure_pa: number;
  loss_pa: number;
  stack_pa: number;
  rise_m: number;
  house_pressure_pa: number;
  velocity_m_per_s: number;
  reynolds: number;
  friction_factor: number;
  diameter_m: number;
  blower?: { free_airflow_m3_per_s: number; shut_off_pressure_pa: number; exponent: number };
  density_kg_per_m3: number;
  outdoor_density_kg_per_m3: number;
  viscosity_pa_s: number;
  developed_length_m: number;
  equivalent_length_m: number;
}

export type Element =
  | { kind: 'straight'; length_m: number; duct: Duct }
  | { kind: 'elbow'; angle_rad: number; elbow: Elbow['kind']; centre_line_radius_m: number }
  | { kind: 'area_change'; area_ratio: number }
  | { kind: 'blockage'; free_area: number }
  | { kind: 'leak'; free_area_m2: number }
  | { kind: 'wall_box' }
  | { kind: 'concealed_elbows'; least: number; most: number }
  | { kind: 'termination'; termination: Termination['kind']; free_area: number }
  | { kind: 'make_up_air'; free_area_m2: number };

export interface ElementFigures {
  id: ElementId;
  element: Element;
  developed_length_m: number;
  air: ElementAir | null;
  heat?: ElementHeat;
  code_deduction_m: number | null;
  code_notes: ('next_smaller_radius' | 'next_larger_angle' | 'over_ninety' | 'at_least' | 'in_the_limit' | 'not_named')[];
  reach: 'within' | 'at_edge' | 'beyond';
}

export interface ElementAir {
  loss_pa: number;
  share: number;
  rank: number;
  equivalent_length_m: number;
  velocity_pressure_pa: number;
  friction_factor: number;
  diameter_m: number;
  coefficient: Coefficient;
  escaped_m3_per_s: number;
  methods: ['rennels' | 'miller' | 'ito' | 'idelchik', number | null][];
}

export interface ElementHeat {
  entering_degc: number;
  leaving_degc: number;
  coldest_wall_degc?: number;
  humidity_ratio_kg_per_kg: number;
  water_kg_per_s: number;
}

export interface WetStretch {
  element: ElementId;
  from_m: number;
  to_m: number;
  coldest_wall_degc: number;
  water_kg_per_s: number;
}

export interface LowPoint {
  element: ElementId;
  depth_m: number;
  water_kg_per_s: number;
}

export interface Heat {
  phase?: 'warm_up' | 'drying' | 'end_of_drying' | 'cool_down' | 'no_heat';
  dew_point_degc?: number;
  leaving_degc: number;
  coldest_wall_degc?: number;
  humidity_ratio_kg_per_kg: number;
  dry_air_kg_per_s: number;
  water_kg_per_s: number;
  heat_w: number;
  wet_stretches: WetStretch[];
  low_points: LowPoint[];
}

export type Finding =
  | { kind: 'elbows_overlap'; element: ElementId; overlap_m: number }
  | { kind: 'elbows_close'; element: ElementId; gap_diameters: number }
  | { kind: 'points_coincide'; node: Node }
  | { kind: 'outside_source'; element: ElementId }
  | { kind: 'no_room'; element: ElementId; with: 'wall' | 'members' | { obstacle: [ObstacleKind, string] }; by_m: number }
  | { kind: 'joint_leaks'; element: ElementId; escaped_m3_per_s: number }
  | { kind: 'wet_wall'; stretch: WetStretch; freezes: boolean }
  | ({ kind: 'dip' } & LowPoint)
  | { kind: 'slow_air'; element: ElementId; velocity_m_per_s: number; carries_m_per_s: number }
  | { kind: 'upsizing_slows'; element: ElementId; before_m_per_s: number; after_m_per_s: number }
  | { kind: 'transitional_flow' }
  | { kind: 'no_airflow' };

export type Verdict = 'meets' | 'does_not_meet' | 'cannot_tell' | 'check_on_site';

export type Doubt =
  | 'radius_below_table' | 'diameter_not_in_table' | 'flexible_in_run' | 'estimated_length'
  | 'elbows_overlap' | 'angle_not_named' | 'maker_elbow_not_typed' | 'limit_not_typed';

/** What would settle an open verdict. */
export type Deciding =
  | { kind: 'length'; element: ElementId; at_most_m: number }
  | { kind: 'elbows'; element: ElementId; at_most?: number }
  | { kind: 'elbow_deduction'; doubt: Doubt; element: ElementId; elbows: number; at_most_m: number }
  | { kind: 'part'; doubt: Doubt; element: ElementId }
  | { kind: 'maker_length' }
  | { kind: 'opening_height'; differs_by_m: number }
  | { kind: 'rectangular_duct'; element: ElementId }
  | { kind: 'input'; input: string; turns_at?: number }
  | { kind: 'airflow' };

export interface CodeFigures {
  rule_set: string;
  section: string;
  source: Source;
  path_through_fittings_counts: boolean;
  measured_length_m: number;
  deductions_m: number;
  length_with_deductions_m: number;
  least_length_m: number;
  most_length_m: number;
  limit_m?: number;
  margin_m?: number;
  verdict: Verdict;
  doubts: Doubt[];
  deciding?: Deciding;
}

export type Measure =
  | { length_m: number }
  | { size_m: number }
  | { count: number }
  | { airflow_m3_per_s: number }
  | { pressure_pa: number }
  | { area_m2: number };

export interface RuleFinding {
  topic: string;
  section: string;
  verdict: Verdict;
  measured?: Measure;
  limit?: { at_most: Measure } | { at_least: Measure } | { nominally: Measure };
  margin?: Measure;
  deciding?: Deciding;
  elements: ElementId[];
  opening?: { opening: string; kind: Opening['kind']; distance_m: number };
  source: Source;
}

export interface CodeCheck {
  findings: RuleFinding[];
  not_covered: [string, Source][];
  side_by_side: [CodeFigures, CodeFigures][];
  disagreement?: {
    elements: { element: ElementId; equivalent_length_m: number; code_length_m?: number }[];
    equivalent_length_m: number;
    code_length_m: number;
    most?: ElementId;
    uncounted?: ElementId;
  };
  advice: { practice: 'over_grade' | 'insulation' | 'fall'; source: Source }[];
  label_length_m?: number;
}

export interface Check {
  code: CodeFigures;
  code_check: CodeCheck;
}

/** What shall be otherwise than usual. */
export interface RerouteOptions {
  clearance_m?: number;
  most_suggestions?: number;
  slack?: number;
  most_labels?: number;
  other_outlet_sides?: boolean;
  dryer_may_move?: boolean;
  roof_height_m?: number | null;
  closed_zones?: string[];
}

export interface RunFigures {
  airflow_m3_per_s: number;
  back_pressure_pa: number;
  code_length_m: number;
  developed_length_m: number;
  parts: number;
  bends: number;
}

export type Change =
  | { kind: 'new_route'; wall: string | null; end_moves_m: number }
  | { kind: 'outlet_side'; side: 'back' | 'left' | 'right' }
  | { kind: 'turn_dryer'; turn_rad: number }
  | { kind: 'move_dryer' | 'shorter_transition'; by_m: number }
  | { kind: 'long_radius'; bends: number[]; radius_m: number }
  | { kind: 'two_forty_fives'; bends: number[]; off_m: number }
  | { kind: 'rigid'; legs: number[] }
  | { kind: 'drop_offset'; bend: number; aside_m: number; moves_hood: boolean }
  | { kind: 'drop_corner'; bend: number };

/** A run, and a dryer, to be taken in place of the plan's own. */
export interface Suggestion {
  run: Run;
  dryer: Dryer;
  changes: Change[];
  figures: RunFigures;
  gain: {
    airflow_m3_per_s: number;
    back_pressure_pa: number;
    code_length_m: number;
    parts: number;
    doubt: { airflow: Band; back_pressure: Band; is_below_gain: boolean } | null;
  } | null;
  rebuilt: number;
}

export interface Reroute {
  present: RunFigures | null;
  has_present_room: boolean;
  suggestions: Suggestion[];
  blocked: { has_no_way_out: boolean; by: string[]; opens: [string, number] | null } | null;
  progress: { done: number; of: number; looked_at: number; is_cut_short: boolean; is_proven: boolean };
}

export interface Cause {
  kind: 'Blockage' | 'CrushedFlex' | 'FlapStuck' | 'Blower' | 'Leak' | 'RoomStarved' | 'LintScreen';
  element: ElementId | null;
}

export type Test =
  | 'ReadAtOutlet' | 'CleanScreen' | 'OpenDoor' | 'HoldFlap' | 'ReadVelocity' | 'OpenOutlet'
  | { ReadAtJoint: ElementId } | { OpenJoint: ElementId } | { LookInto: ElementId };

export interface SuggestedTest {
  test: Test;
  effort: number;
  bits: number;
  cautions: ('JointOpen' | 'Tap' | 'PowerOff' | 'Height' | 'CarbonMonoxide')[];
}

/** Mean, 10th and 90th percentile. */
export type Spread = [number, number, number];

export interface Diagnosis {
  causes: {
    cause: Cause;
    probability: number;
    prior: number;
    free_area: Spread | null;
    airflow_left: number;
    explains: { entry: number; read: number; expected: number }[];
  }[];
  nothing: number;
  harmless: number;
  airflow_now: Spread;
  airflow_before: Spread | null;
  clean_airflow: number;
  two_faults: number;
  settled: boolean;
  caveats: ('NothingRead' | 'StatedAirflow' | 'FaultInPlan' | { Contradiction: number } | { PlaceGone: number } | { TemperatureOnly: number })[];
  next: SuggestedTest | null;
  runner_up: SuggestedTest | null;
}

export interface VisitMeaning {
  visit: string;
  diagnosis: Diagnosis | null;
  clean: ({ read: number; likely: number; band: Band; error: number; airflow: number; velocity_pressure: number } | null)[];
}

export interface View {
  title: string;
  drawing: string;
  run: string;
  totals: { name: string; figure: string; against: string }[];
  costliest: string;
  cautions_name: string;
  cautions: string[];
}
