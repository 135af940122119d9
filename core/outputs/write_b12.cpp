// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/outputs/write_b12.h"

#include "core/base/number_text.h"
#include "core/base/whole_file.h"

#include <string>

#include <nlohmann/json.hpp>

namespace outputs {

namespace {

constexpr int positionDecimals = 7; ///< Of a degree; B-12 asks for six at least.
constexpr int depthDecimals = 3;    ///< Of a metre; B-12 asks for one at least.

/// Calls `take` with each sounding that B-12 can hold until it gives false.
template <class Take>
void forEach(std::span<const soundings::SurveyDay> days, const reduction::ReducedSurvey* survey,
             const Take& take) {
    for (std::size_t d = 0; d < days.size(); ++d) {
        const bool isReduced = survey != nullptr && d < survey->days.size() &&
                               survey->days[d].verdicts.size() == days[d].soundings.size();
        for (std::size_t i = 0; i < days[d].soundings.size(); ++i) {
            const bool isKept =
                !isReduced || survey->days[d].verdicts[i] == soundings::Verdict::kept;
            if (isKept && days[d].soundings[i].time && !take(days[d].soundings[i])) {
                return;
            }
        }
    }
}

/// RFC 3339, always with milliseconds.
std::string timeText(units::Moment time) {
    std::string text = units::isoText(time);
    if (text.find('.') == std::string::npos) {
        text.insert(text.size() - 1, ".000");
    }
    return text;
}

std::string lonText(const soundings::Sounding& sounding) {
    return base::fixedText(sounding.place.lon_deg, positionDecimals);
}

std::string latText(const soundings::Sounding& sounding) {
    return base::fixedText(sounding.place.lat_deg, positionDecimals);
}

std::string depthText(const soundings::Sounding& sounding) {
    return base::fixedText(sounding.shown.inMetres(), depthDecimals);
}

/// What B-12 (edition 3.0.0, tables of metadata) asks of all soundings together, as far as a water
/// knows it. Who gives them, from which vessel and under which licence is the giver's to say, and
/// is left out rather than made up.
std::string headText() {
    const nlohmann::ordered_json head{
        {"trustedNode",
         {{"convention", "GeoJSON CSB 3.0"},
          {"providerLogger", "Meremark"},
          {"navigationCRS", "EPSG:4326"},
          {"verticalReferenceOfDepth", "Transducer"},
          {"vesselPositionReferencePoint", "GNSS"}}},
        {"platform", {{"type", "Private vessel"}}},
        {"depthUnits", "meters"},
        {"timeUnits", "ISO 8601"},
        {"processing",
         "none: as the sounder showed it, not corrected for sound speed, draft or water level"}};
    return head.dump(-1, ' ', false, nlohmann::json::error_handler_t::replace);
}

} // namespace

bool hasB12Soundings(std::span<const soundings::SurveyDay> days,
                     const reduction::ReducedSurvey* survey) {
    bool hasAny = false;
    forEach(days, survey, [&](const soundings::Sounding&) {
        hasAny = true;
        return false;
    });
    return hasAny;
}

base::Result<void> writeB12Geojson(const std::filesystem::path& path,
                                   std::span<const soundings::SurveyDay> days,
                                   const reduction::ReducedSurvey* survey) {
    std::string text = "{\"type\":\"FeatureCollection\",\"properties\":" + headText() +
                       ",\"lineage\":[],\"features\":[\n";
    bool isFirst = true;
    forEach(days, survey, [&](const soundings::Sounding& sounding) {
        text += isFirst ? "" : ",\n";
        isFirst = false;
        text += R"({"type":"Feature","geometry":{"type":"Point","coordinates":[)" +
                lonText(sounding) + ',' + latText(sounding) + R"(]},"properties":{"depth":)" +
                depthText(sounding) + R"(,"time":")" + timeText(*sounding.time) + "\"}}";
        return true;
    });
    text += "\n]}\n";
    return base::writeWholeFile(path, text);
}

base::Result<void> writeB12Table(const std::filesystem::path& path,
                                 std::span<const soundings::SurveyDay> days,
                                 const reduction::ReducedSurvey* survey) {
    std::string text = "LON,LAT,DEPTH,TIME\n";
    forEach(days, survey, [&](const soundings::Sounding& sounding) {
        text += lonText(sounding) + ',' + latText(sounding) + ',' + depthText(sounding) + ',' +
                timeText(*sounding.time) + '\n';
        return true;
    });
    return base::writeWholeFile(path, text);
}

} // namespace outputs
