// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/batch/sketch_report.h"

#include "app/batch/report.h"
#include "core/reduction/sound_speed.h"
#include "core/water/questions/section_ground.h"
#include "core/water/questions/section_use.h"

#include <map>

#include <nlohmann/json.hpp>

namespace batch {

using Json = nlohmann::ordered_json;

namespace {

Json soundingsPart(const water::Derived& derived, const SketchDone& done) {
    std::size_t read = 0;
    std::map<std::string, readers::RefusedRows> refused;
    Json firstBad = Json::object();
    for (const FileRead& file : done.files) {
        read += file.report.used;
        for (const auto& [reason, rows] : file.report.refused) {
            auto& sum = refused[reason];
            if (sum.count == 0) {
                firstBad[reason] = {
                    {"file", file.file}, {"line", rows.firstLine}, {"text", rows.firstText}};
            }
            sum.count += rows.count;
        }
    }
    Json bad = Json::object();
    for (const auto& [reason, rows] : refused) {
        bad[reason] = rows.count;
    }
    return {{"read", read},
            {"kept", derived.checked ? derived.checked->survey.keptCount() : 0},
            {"set_aside",
             derived.checked ? Json(derived.checked->survey.setAsideCounts()) : Json::object()},
            {"bad_rows", bad},
            {"first_bad_rows", firstBad}};
}

Json dayPart(const soundings::SurveyDay& day) {
    Json part{
        {"survey_day", day.name},
        {"file", day.source},
        {"soundings", day.soundings.size()},
        {"draft_m", rounded(day.sounder.draft.inMetres(), 3)},
        {"assumed_sound_speed_m_s", rounded(day.sounder.assumedSoundSpeed.inMetresPerSecond(), 2)}};
    const auto level = day.gauge.levelAt(std::nullopt);
    part["level_m"] = level ? rounded(level->inMetresOnGauge(), 3) : Json(nullptr);
    part["water_temperature_c"] =
        day.waterTemperature ? rounded(day.waterTemperature->inCelsius(), 2) : Json(nullptr);
    part["sound_speed_m_s"] =
        day.waterTemperature
            ? rounded(reduction::soundSpeedIn(*day.waterTemperature).inMetresPerSecond(), 2)
            : Json(nullptr);
    part["agreed_offset_m"] =
        day.agreedOffset ? rounded(day.agreedOffset->inMetres(), 3) : Json(nullptr);
    part["agreed_delay_s"] = day.agreedDelay_s ? rounded(*day.agreedDelay_s, 2) : Json(nullptr);
    return part;
}

Json reductionPart(const water::Water& water) {
    Json part{{"chart_level_m", rounded(water.chartLevel.inMetresOnGauge(), 3)}};
    if (!water.days.empty()) {
        const Json first = dayPart(water.days.front());
        for (const char* key : {"draft_m", "level_m", "water_temperature_c",
                                "assumed_sound_speed_m_s", "sound_speed_m_s"}) {
            part[key] = first[key];
        }
    }
    part["survey_days"] = Json::array();
    for (const soundings::SurveyDay& day : water.days) {
        part["survey_days"].push_back(dayPart(day));
    }
    return part;
}

Json crossingsPart(const water::Water& water, const water::Derived& derived) {
    if (!derived.checked) {
        return Json::object();
    }
    const reduction::CrossingCheck& check = derived.checked->check;
    Json offsets = Json::object();
    for (std::size_t i = 0; i < water.days.size() && i < derived.checked->tie.offsets.size(); ++i) {
        offsets[water.days[i].name] = rounded(derived.checked->tie.offsets[i].inMetres(), 3);
    }
    Json delays = Json::object();
    for (std::size_t i = 0; i < water.days.size() && i < derived.checked->delays.size(); ++i) {
        const reduction::PositionDelay& delay = derived.checked->delays[i];
        delays[water.days[i].name] = delay.isKnown ? rounded(delay.delay_s, 2) : Json(nullptr);
    }
    return {{"count", check.count},
            {"mean_m", rounded(check.mean_m, 3)},
            {"rms_m", rounded(check.rms_m, 3)},
            {"p95_m", rounded(check.p95_m, 3)},
            {"within_order_1b", rounded(check.withinOrder1b, 4)},
            {"within_order_2", rounded(check.withinOrder2, 4)},
            {"rms_if_tied_m", rounded(derived.checked->tie.after.rms_m, 3)},
            {"day_offsets_m", offsets},
            {"delays_s", delays}};
}

Json waterPart(const surface::Hypsography& form) {
    return {{"area_m2", rounded(form.area.inSquareMetres(), 1)},
            {"volume_m3", rounded(form.volume.inCubicMetres(), 1)},
            {"mean_depth_m", rounded(form.meanDepth.inMetres(), 3)},
            {"max_depth_m", rounded(form.maxDepth.inMetres(), 3)},
            {"shoreline_m", rounded(form.shoreLength.inMetres(), 1)},
            {"shoreline_development", rounded(form.shoreDevelopment, 4)}};
}

Json hypsographyPart(const surface::Hypsography& form) {
    Json rows = Json::array();
    for (const surface::HypsographyStep& step :
         surface::rowsEvery(form, units::Length::metres(1.0))) {
        rows.push_back({{"depth_m", rounded(step.depth.inMetres(), 3)},
                        {"area_m2", rounded(step.area.inSquareMetres(), 1)},
                        {"volume_m3", rounded(step.below.inCubicMetres(), 1)}});
    }
    return rows;
}

Json bandsPart(const std::vector<contours::BandMeasure>& bands) {
    Json rows = Json::array();
    for (const contours::BandMeasure& band : bands) {
        rows.push_back({{"from_m", rounded(band.from.inMetres(), 3)},
                        {"to_m", band.to ? rounded(band.to->inMetres(), 3) : Json(nullptr)},
                        {"area_m2", rounded(band.area.inSquareMetres(), 1)},
                        {"volume_m3", rounded(band.volume.inCubicMetres(), 1)}});
    }
    return rows;
}

Json zonesPart(const water::Derived& derived) {
    std::map<structure::ZoneKind, std::pair<int, double>> byKind;
    const auto count = [&byKind](const std::vector<structure::Zone>& zones) {
        for (const structure::Zone& zone : zones) {
            ++byKind[zone.kind].first;
            byKind[zone.kind].second += zone.area.inSquareMetres();
        }
    };
    if (derived.structure) {
        count(derived.structure->zones);
    }
    if (derived.weed) {
        count(derived.weed->zones.zones);
    }
    Json rows = Json::array();
    for (const auto& [kind, sum] : byKind) {
        rows.push_back({{"kind", structure::nameOf(kind)},
                        {"count", sum.first},
                        {"area_m2", rounded(sum.second, 1)}});
    }
    return rows;
}

Json groundPart(const std::vector<water::KindShare>& ground) {
    Json shares = Json::object();
    for (const water::KindShare& part : ground) {
        shares[std::string(structure::nameOf(part.kind))] = rounded(part.share, 4);
    }
    return shares;
}

Json sectionsPart(const water::Water& water, const water::Derived& derived) {
    const auto uses = water::useOfSections(water, derived);
    const auto grounds = water::groundOfSections(derived);
    Json rows = Json::array();
    for (std::size_t i = 0; i < derived.sections->sections.size(); ++i) {
        const sections::Section& section = derived.sections->sections[i];
        rows.push_back({{"name", section.name},
                        {"number", section.number},
                        {"area_m2", rounded(section.area.inSquareMetres(), 1)},
                        {"mean_depth_m", rounded(section.meanDepth.inMetres(), 2)},
                        {"max_depth_m", rounded(section.maxDepth.inMetres(), 2)},
                        {"shoreline_m", rounded(section.shore.inMetres(), 1)},
                        {"weed_share", rounded(section.weedShare, 4)},
                        {"drop_off_m", rounded(section.dropOff.inMetres(), 1)},
                        {"trust_share",
                         {{"sounded", rounded(section.trustShare[0], 4)},
                          {"inferred", rounded(section.trustShare[1], 4)},
                          {"guess", rounded(section.trustShare[2], 4)}}}});
        Json& row = rows.back();
        if (i < grounds.size()) {
            row["structure_share"] = groundPart(grounds[i]);
        }
        if (i < uses.size()) {
            row["stays"] = uses[i].stays;
            row["never_fished"] = uses[i].stays == 0;
        }
    }
    return rows;
}

Json linesPart(const water::Water& water, const std::optional<surface::SurveyTrip>& trip) {
    Json rows = Json::array();
    if (!trip) {
        return rows;
    }
    const auto place = [&](geo::WaterPoint p) {
        const geo::LonLat at = water.frame->toEarth(p);
        return Json::array({rounded(at.lon_deg, 7), rounded(at.lat_deg, 7)});
    };
    for (const surface::SurveyLine& line : trip->lines) {
        rows.push_back({{"from", place(line.start)},
                        {"to", place(line.end)},
                        {"length_m", rounded(line.length.inMetres(), 1)},
                        {"gain", rounded(line.gain_m3, 1)}});
    }
    return rows;
}

Json drawingPart(const surface::DrawReport& report) {
    Json part{{"cell_m", rounded(report.cell.inMetres(), 3)},
              {"cells", report.cells},
              {"stiffness", report.stiffness},
              {"contour_stiffness", report.contourStiffness},
              {"soundings_used", report.soundingsUsed},
              {"spikes_left_out", report.spikes.size()},
              {"iterations", report.iterations}};
    part["held_out_mean_error_m"] =
        report.heldOut ? rounded(report.heldOut->mean_m, 3) : Json(nullptr);
    return part;
}

Json timingPart(const water::Derived& derived, const SketchDone& done) {
    const auto seconds = [&](water::Step step) {
        const auto found = derived.seconds.find(step);
        return found == derived.seconds.end() ? 0.0 : found->second;
    };
    const double setAside = derived.checked ? derived.checked->setAsideSeconds : 0.0;
    const double trust = derived.drawn ? derived.drawn->report.trustSeconds : 0.0;
    return {{"read", rounded(done.readSeconds, 3)},
            {"reduce", rounded(seconds(water::Step::reduce) - setAside, 3)},
            {"set_aside", rounded(setAside, 3)},
            {"draw", rounded(seconds(water::Step::draw) - trust, 3)},
            {"trust", rounded(trust, 3)},
            {"contours", rounded(seconds(water::Step::bands), 3)},
            {"structure", rounded(seconds(water::Step::structure), 3)},
            {"weed", rounded(seconds(water::Step::weed), 3)},
            {"sections", rounded(seconds(water::Step::sections), 3)},
            {"write", rounded(done.writeSeconds, 3)}};
}

} // namespace

Json sketchReport(const water::Water& water, const water::Derived& derived,
                  const SketchDone& done) {
    Json report;
    report["soundings"] = soundingsPart(derived, done);
    report["reduction"] = reductionPart(water);
    report["crossings"] = crossingsPart(water, derived);
    if (derived.form) {
        report["water"] = waterPart(derived.form->hypsography);
        report["hypsography"] = hypsographyPart(derived.form->hypsography);
        report["bands"] = bandsPart(derived.form->bandMeasures);
    }
    report["zones"] = zonesPart(derived);
    report["sections"] = derived.sections ? sectionsPart(water, derived) : Json::array();
    report["next_lines"] = linesPart(water, done.nextLines);
    if (derived.drawn) {
        report["drawing"] = drawingPart(derived.drawn->report);
    }
    std::vector<std::string> notes = done.notes;
    notes.insert(notes.end(), derived.notes.begin(), derived.notes.end());
    for (const auto& [step, error] : derived.failures) {
        notes.push_back(error.sentence());
    }
    if (derived.sections) {
        for (const sections::ChangeRefused& refused : derived.sections->refused) {
            notes.push_back(refused.why.sentence());
        }
    }
    report["notes"] = notes;
    report["timing_s"] = timingPart(derived, done);
    return report;
}

} // namespace batch
