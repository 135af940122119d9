// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/outputs/write_gpx.h"

#include "core/base/harmless_text.h"
#include "core/base/number_text.h"
#include "core/base/whole_file.h"
#include "core/outputs/not_for_navigation.h"

#include <algorithm>
#include <map>
#include <string>
#include <vector>

#include <fmt/format.h>

namespace outputs {

namespace {

constexpr int decimals = 7; ///< Of a degree: a centimetre.
constexpr const char* ourNamespace = "urn:meremark:gpx:1";

/// XML text, without characters that XML 1.0 does not know.
std::string escaped(std::string_view text) {
    std::string out;
    for (const char c : base::harmless(text)) {
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
            out += c;
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

/// The user's name of the mark, else the named place near it, else its section's, after a blank;
/// empty where it has none of them.
std::string calledAfter(const marks::Mark& mark) {
    std::string name = mark.near ? mark.near->name : mark.sectionName;
    if (!mark.name.empty()) {
        name = mark.name;
    }
    return name.empty() ? name : " " + name;
}

/// What is to be minded and how to lie there, before what speaks for the mark.
std::string descriptionOf(const marks::ToldMarks& told, const marks::Mark& mark,
                          const marks::DayStop* stop) {
    const std::string reasons = told.reasonsOf(mark.factors);
    return told.lieOf ? told.lieOf(mark, stop) + '\n' + reasons : reasons;
}

/// What a boat at one anchor needs round it; empty between two.
std::string swing(const marks::Mark& mark) {
    return mark.anchors.swing ? metres("swing_m", mark.anchors.swing->radius.inMetres()) : "";
}

std::string waypoint(const marks::Mark& mark, const std::string& name, std::string_view about,
                     const geo::WaterFrame& frame) {
    return fmt::format(
        "<wpt {}><name>{}</name><desc>{}</desc><type>mark</type><extensions>"
        "{}{}{}{}{}</extensions></wpt>\n",
        position(mark.lonLat), escaped(name), escaped(about),
        metres("depth_m", mark.depth.inMetres()), metres("trust_m", mark.trust.inMetres()),
        anchor("bow_anchor", mark.anchors.bow, frame),
        mark.anchors.stern ? anchor("stern_anchor", *mark.anchors.stern, frame) : "", swing(mark));
}

/// The marks in the order of the day, those that it leaves out after them.
std::vector<const marks::Mark*> inTheOrderOf(const marks::DayPlan& day,
                                             std::span<const marks::Mark> marks) {
    std::vector<const marks::Mark*> ordered;
    for (const marks::DayStop& stop : day.stops) {
        if (const auto mark = std::ranges::find(marks, stop.rank, &marks::Mark::rank);
            mark != marks.end()) {
            ordered.push_back(&*mark);
        }
    }
    for (const marks::Mark& mark : marks) {
        if (std::ranges::find(ordered, &mark) == ordered.end()) {
            ordered.push_back(&mark);
        }
    }
    return ordered;
}

std::string routePoint(geo::WaterPoint at, std::string_view name, const geo::WaterFrame& frame) {
    return fmt::format("<rtept {}><name>{}</name></rtept>\n", position(frame.toEarth(at)),
                       escaped(name));
}

/// A leg without its first point, which the leg before has written.
std::string legPoints(const geo::Path& way, const std::string& last, const geo::WaterFrame& frame) {
    std::string points;
    for (std::size_t i = 1; i < way.size(); ++i) {
        points += routePoint(way[i], i + 1 == way.size() ? last : "turn", frame);
    }
    return points;
}

/// Where no way is known from the stop before, the route goes on at the stop itself.
std::string dayRoute(const marks::DayPlan& day, std::span<const marks::Mark> marks,
                     const std::map<int, std::string>& names, const geo::WaterFrame& frame) {
    std::string points;
    for (const marks::DayStop& stop : day.stops) {
        const auto mark = std::ranges::find(marks, stop.rank, &marks::Mark::rank);
        if (mark == marks.end()) {
            continue;
        }
        if (points.empty() && !stop.way.empty()) {
            points += routePoint(stop.way.front(), "launch", frame);
        }
        points += stop.way.empty() ? routePoint(mark->place, names.at(stop.rank), frame)
                                   : legPoints(stop.way, names.at(stop.rank), frame);
    }
    points += legPoints(day.wayHome, "launch", frame);
    return points.empty() ? points
                          : fmt::format("<rte><name>The way of the day</name>\n{}</rte>\n", points);
}

} // namespace

base::Result<void> writeDayGpx(const std::filesystem::path& path, const marks::ToldMarks& told,
                               const marks::DayPlan& day, const geo::WaterFrame& frame,
                               std::string_view waterName) {
    std::string body;
    std::map<int, std::string> names;
    for (const marks::Mark* mark : inTheOrderOf(day, told.marks)) {
        const std::string name =
            fmt::format("{:02} mark {}{}", names.size() + 1, mark->rank, calledAfter(*mark));
        const auto stop = std::ranges::find(day.stops, mark->rank, &marks::DayStop::rank);
        body +=
            waypoint(*mark, name,
                     descriptionOf(told, *mark, stop == day.stops.end() ? nullptr : &*stop), frame);
        names[mark->rank] = name;
    }
    return base::writeWholeFile(
        path, document(waterName, body + dayRoute(day, told.marks, names, frame)));
}

base::Result<void> writeMarksGpx(const std::filesystem::path& path, const marks::ToldMarks& told,
                                 const geo::WaterFrame& frame, std::string_view waterName) {
    std::string body;
    for (const marks::Mark& mark : told.marks) {
        body += waypoint(mark, fmt::format("{}{}", mark.rank, calledAfter(mark)),
                         descriptionOf(told, mark, nullptr), frame);
    }
    return base::writeWholeFile(path, document(waterName, body));
}

base::Result<void> writeTripGpx(const std::filesystem::path& path, const surface::SurveyTrip& trip,
                                const geo::WaterFrame& frame, std::string_view waterName) {
    std::string points;
    const auto add = [&](geo::WaterPoint at, const std::string& name) {
        points += routePoint(at, name, frame);
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
