// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/batch/marks_report.h"

#include "app/batch/report.h"
#include "app/wording/belief_words.h"
#include "app/wording/cautions.h"
#include "app/wording/planned_words.h"
#include "app/wording/reasons.h"
#include "core/water/questions/banned_extent.h"

#include <algorithm>

#include <nlohmann/json.hpp>

namespace batch {

using Json = nlohmann::ordered_json;

namespace {

const wording::Words inMetres; ///< Of the sentences, as of all figures.

void putPlace(Json& part, const water::Water& water, geo::WaterPoint place) {
    const geo::LonLat at = water.frame->toEarth(place);
    part["lon"] = rounded(at.lon_deg, 7);
    part["lat"] = rounded(at.lat_deg, 7);
}

Json anchorPart(const water::Water& water, const anchoring::Anchor& anchor,
                const marks::AnchorGround& ground) {
    Json part;
    putPlace(part, water, anchor.place);
    part["depth_m"] = rounded(anchor.depth.inMetres(), 2);
    part["rope_m"] = rounded(anchor.rope.inMetres(), 1);
    part["scope"] = rounded(anchor.scope, 2);
    part["by_hand"] = anchor.isByHand;
    part["slope_percent"] = ground.slope ? Json(rounded(100.0 * *ground.slope, 1)) : Json(nullptr);
    part["bottom"] = ground.bottom ? Json(soundings::nameOf(*ground.bottom)) : Json(nullptr);
    return part;
}

Json rodPart(const water::Water& water, const rods::RodPlace& rod) {
    Json part{{"bearing_deg", rounded(rod.bearing.inDegrees(), 1)},
              {"distance_m", rounded(rod.distance.inMetres(), 1)}};
    putPlace(part, water, rod.place);
    part["depth_m"] = rounded(rod.depth.inMetres(), 2);
    part["stop_knot_m"] = rounded(rod.stopKnot.inMetres(), 2);
    part["by_hand"] = rod.isByHand;
    part["over"] = rod.over ? Json(structure::nameOf(*rod.over)) : Json(nullptr);
    return part;
}

Json factorsPart(const std::vector<marks::Factor>& factors) {
    Json rows = Json::array();
    for (const marks::Factor& factor : factors) {
        // Unrounded, so that they can be multiplied out again.
        Json row{{"name", marks::nameOf(factor.kind)}};
        if (std::ranges::find(marks::allFactorKinds, factor.kind) != marks::allFactorKinds.end()) {
            row["value"] = factor.value;
            row["weight"] = factor.weight;
        }
        row["times"] = factor.times;
        row["because"] = wording::said(factor.because, inMetres).toStdString();
        rows.push_back(std::move(row));
    }
    return rows;
}

Json linesPart(const QStringList& sentences) {
    Json lines = Json::array();
    for (const QString& sentence : sentences) {
        lines.push_back(sentence.toStdString());
    }
    return lines;
}

Json markPart(const water::Water& water, const marks::Mark& mark) {
    Json part{{"rank", mark.rank}};
    part["lon"] = rounded(mark.lonLat.lon_deg, 7);
    part["lat"] = rounded(mark.lonLat.lat_deg, 7);
    part["depth_m"] = rounded(mark.depth.inMetres(), 2);
    part["trust_m"] = rounded(mark.trust.inMetres(), 2);
    part["near"] = mark.near ? Json{{"name", mark.near->name},
                                    {"distance_m", rounded(mark.near->distance.inMetres(), 1)},
                                    {"bearing_deg", rounded(mark.near->bearing.inDegrees(), 1)}}
                             : Json(nullptr);
    part["section"] = mark.sectionName.empty() ? Json(nullptr) : Json(mark.sectionName);
    part["zones"] = Json::array();
    for (const structure::ZoneKind kind : mark.zones) {
        part["zones"].push_back(structure::nameOf(kind));
    }
    part["score"] = mark.score;
    part["times_mean"] = mark.score;
    const auto& expected = mark.expected;
    part["expected_per_10_rod_hours"] = expected ? Json(expected->per10RodHours) : Json(nullptr);
    part["expected_low"] = expected ? Json(expected->low) : Json(nullptr);
    part["expected_high"] = expected ? Json(expected->high) : Json(nullptr);
    part["to_learn"] = mark.toLearn;
    part["factors"] = factorsPart(mark.factors);
    part["fetch_m"] = mark.fetch ? Json(rounded(mark.fetch->inMetres(), 0)) : Json(nullptr);
    part["wave_height_m"] =
        mark.waveHeight ? Json(rounded(mark.waveHeight->inMetres(), 2)) : Json(nullptr);
    part["cautions"] = linesPart(wording::cautionsOf(mark, inMetres));
    part["anchors"] = {{"heading_deg", rounded(mark.anchors.lie.heading.inDegrees(), 1)},
                       {"bow", anchorPart(water, mark.anchors.bow, mark.bowGround)},
                       {"stern", mark.anchors.stern
                                     ? anchorPart(water, *mark.anchors.stern, mark.sternGround)
                                     : Json(nullptr)}};
    if (const auto& swing = mark.anchors.swing) {
        part["anchors"]["swing_m"] = rounded(swing->radius.inMetres(), 1);
        part["anchors"]["swing_to_each_side_deg"] = rounded(swing->toEachSide_deg, 0);
    }
    part["rods"] = Json::array();
    for (const rods::RodPlace& rod : mark.spread.rods) {
        part["rods"].push_back(rodPart(water, rod));
    }
    return part;
}

Json degreesOrNull(const logbook::Wind& wind) {
    return wind.from ? Json(rounded(wind.from->inDegrees(), 1)) : Json(nullptr);
}

Json speedOrNull(const logbook::Wind& wind) {
    return wind.speed ? Json(rounded(wind.speed->inMetresPerSecond(), 2)) : Json(nullptr);
}

/// Null for what nobody said.
Json windPart(const logbook::Wind& wind) {
    if (!wind.from && !wind.speed) {
        return nullptr;
    }
    return {{"from_deg", degreesOrNull(wind)}, {"speed_m_s", speedOrNull(wind)}};
}

Json beliefsPart(const water::PlannedDay& planned) {
    Json rows = Json::array();
    for (const marks::BeliefRecord& record : planned.beliefs) {
        Json row{{"name", marks::nameOf(record.kind)},
                 {"said", record.said},
                 {"said_times", record.saidTimes}};
        row["log_says"] = record.log ? Json{{"times", record.log->times},
                                            {"low", record.log->low},
                                            {"high", record.log->high}}
                                     : Json(nullptr);
        row["in_words"] =
            wording::said(record, planned.meanPer10RodHours.has_value()).toStdString();
        rows.push_back(std::move(row));
    }
    return rows;
}

Json excludedPart(const water::PlannedDay& planned) {
    Json part = Json::object();
    for (std::size_t k = 0; k < planned.excluded.size(); ++k) {
        part[std::string(marks::nameOf(marks::allExclusions[k]))] =
            rounded(planned.excluded[k].inSquareMetres(), 0);
    }
    return part;
}

Json bannedPart(const water::Water& water) {
    Json rows = Json::array();
    for (const water::BannedWater& banned : water.banned) {
        const double area_m2 = water::extentOf(water, banned).area.inSquareMetres();
        rows.push_back({{"name", banned.name.empty() ? Json(nullptr) : Json(banned.name)},
                        {"area_m2", rounded(area_m2, 0)}});
    }
    return rows;
}

Json hoursOf(std::chrono::seconds span) {
    return rounded(static_cast<double>(span.count()) / 3600.0, 3);
}

Json timeOrNull(const std::optional<units::Moment>& moment, const units::Clock& clock) {
    return moment
               ? Json(units::isoLocalText(std::chrono::floor<std::chrono::seconds>(*moment), clock))
               : Json(nullptr);
}

} // namespace

Json marksReport(const water::Water& water, const water::PlannedDay& planned) {
    Json report;
    report["date"] = units::isoText(planned.plan.day.day);
    report["wind"] = windPart(planned.plan.day.wind);
    report["wind_later"] = nullptr;
    if (const auto& later = planned.plan.day.windLater) {
        report["wind_later"] = {{"at", wording::Words::timeOfDay(later->at).toStdString()},
                                {"from_deg", degreesOrNull(later->wind)},
                                {"speed_m_s", speedOrNull(later->wind)}};
    }
    report["level_change_m"] = rounded(planned.plan.day.levelChange.inMetres(), 3);
    report["clock"] = water.clock.zone();
    const auto& stay = planned.plan.day.stay;
    report["stay_hours"] = stay ? hoursOf(*stay) : Json(nullptr);
    report["try"] = planned.plan.tryNew;
    report["mean_per_10_rod_hours"] =
        planned.meanPer10RodHours ? Json(*planned.meanPer10RodHours) : Json(nullptr);
    report["notes"] = linesPart(wording::basisOf(planned, inMetres) + wording::notesOf(planned));
    report["marks"] = Json::array();
    for (const marks::Mark& mark : planned.marks) {
        report["marks"].push_back(markPart(water, mark));
    }
    report["day"] = Json::array();
    for (const marks::DayStop& stop : planned.day.stops) {
        report["day"].push_back({{"rank", stop.rank},
                                 {"arrive", timeOrNull(stop.arrive, water.clock)},
                                 {"leave", timeOrNull(stop.leave, water.clock)},
                                 {"move_m", rounded(stop.move.inMetres(), 0)},
                                 {"stay_hours", hoursOf(stop.stay)},
                                 {"stay_by_hand", stop.isStayByHand},
                                 {"wind", windPart(stop.wind)}});
    }
    report["order_by_hand"] = planned.day.isOrderByHand;
    report["light"] = {{"sunrise", timeOrNull(planned.light.sunrise, water.clock)},
                       {"sunset", timeOrNull(planned.light.sunset, water.clock)},
                       {"civil_dusk", timeOrNull(planned.light.civilDusk, water.clock)}};
    report["cautions"] = linesPart(wording::cautionsOf(planned, inMetres));
    report["rules"] = linesPart(wording::rulesOf(planned));
    report["fish_care"] = linesPart(wording::fishCareOf(planned, inMetres));
    report["beliefs"] = beliefsPart(planned);
    report["excluded_m2"] = excludedPart(planned);
    report["banned"] = bannedPart(water);
    report["too_rough_in_their_hours"] = planned.day.tooRough;
    report["places_looked_at"] = planned.looked;
    report["places_that_hold_no_anchors"] = planned.unanchorable;
    return report;
}

} // namespace batch
