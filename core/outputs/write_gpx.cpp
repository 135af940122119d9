// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/outputs/write_gpx.h"

#include "core/base/number_text.h"
#include "core/base/whole_file.h"
#include "core/outputs/not_for_navigation.h"

#include <string>

#include <fmt/format.h>

namespace outputs {

namespace {

constexpr int decimals = 7; ///< Of a degree: a centimetre.
constexpr const char* ourNamespace = "urn:meremark:gpx:1";

/// XML text; characters that XML 1.0 does not know become blanks.
std::string escaped(std::string_view text) {
    std::string out;
    for (const char c : text) {
        switch (c) {
        case '&':
            out += "&amp;";
            break;
        case '<':
            out += "&lt;";
            break;
        case '>':
            out += "&gt;";
            break;
        case '"':
            out += "&quot;";
            break;
        default:
            out += static_cast<unsigned char>(c) < 0x20 && c != '\n' && c != '\t' ? ' ' : c;
        }
    }
    return out;
}

/// lat and lon as attributes; GPX knows no longitude of 180.
std::string position(geo::LonLat place) {
    std::string lon = base::fixedText(place.lon_deg, decimals);
    if (lon == base::fixedText(180.0, decimals)) {
        lon.insert(lon.begin(), '-');
    }
    return fmt::format(R"(lat="{}" lon="{}")", base::fixedText(place.lat_deg, decimals), lon);
}

std::string document(std::string_view name, std::string_view body) {
    return fmt::format("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
                       "<gpx version=\"1.1\" creator=\"Meremark\""
                       " xmlns=\"http://www.topografix.com/GPX/1/1\" xmlns:mm=\"{}\">\n"
                       "<metadata><name>{}</name><desc>{}</desc></metadata>\n{}</gpx>\n",
                       ourNamespace, escaped(name), notForNavigation, body);
}

std::string metres(std::string_view element, double value_m) {
    return fmt::format("<mm:{0}>{1}</mm:{0}>", element, base::fixedText(value_m, 2));
}

std::string anchor(std::string_view element, const anchoring::Anchor& anchor,
                   const geo::WaterFrame& frame) {
    return fmt::format(
        "<mm:{0} {1}>{2}{3}</mm:{0}>", element, position(frame.toEarth(anchor.place)),
        metres("depth_m", anchor.depth.inMetres()), metres("rope_m", anchor.rope.inMetres()));
}

std::string waypoint(const marks::Mark& mark, std::string_view reasons,
                     const geo::WaterFrame& frame) {
    const std::string name =
        fmt::format("{}{}{}", mark.rank, mark.sectionName.empty() ? "" : " ", mark.sectionName);
    return fmt::format("<wpt {}><name>{}</name><desc>{}</desc><type>mark</type><extensions>"
                       "{}{}{}{}</extensions></wpt>\n",
                       position(mark.lonLat), escaped(name), escaped(reasons),
                       metres("depth_m", mark.depth.inMetres()),
                       metres("trust_m", mark.trust.inMetres()),
                       anchor("bow_anchor", mark.anchors.bow, frame),
                       anchor("stern_anchor", mark.anchors.stern, frame));
}

} // namespace

base::Result<void> writeMarksGpx(const std::filesystem::path& path, const marks::ToldMarks& told,
                                 const geo::WaterFrame& frame, std::string_view waterName) {
    std::string body;
    for (const marks::Mark& mark : told.marks) {
        body += waypoint(mark, told.reasonsOf(mark.factors), frame);
    }
    return base::writeWholeFile(path, document(waterName, body));
}

base::Result<void> writeTripGpx(const std::filesystem::path& path, const surface::SurveyTrip& trip,
                                const geo::WaterFrame& frame, std::string_view waterName) {
    std::string points;
    const auto add = [&](geo::WaterPoint at, const std::string& name) {
        points +=
            fmt::format("<rtept {}><name>{}</name></rtept>\n", position(frame.toEarth(at)), name);
    };
    std::size_t line = 0;
    bool isOnLine = false;
    for (std::size_t i = 0; i < trip.route.size(); ++i) {
        const geo::WaterPoint at = trip.route[i];
        if (isOnLine) {
            add(at, fmt::format("{} end", ++line));
            isOnLine = false;
        } else if (line < trip.lines.size() && at == trip.lines[line].start) {
            add(at, fmt::format("{} start", line + 1));
            isOnLine = true;
        } else {
            add(at, i == 0 || i + 1 == trip.route.size() ? "launch" : "turn");
        }
    }
    return base::writeWholeFile(
        path, document(waterName,
                       fmt::format("<rte><name>Where to sound next</name>\n{}</rte>\n", points)));
}

} // namespace outputs
