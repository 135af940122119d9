// SPDX-License-Identifier: GPL-3.0-or-later
#include "sample-survey/notes.h"

#include "sample-survey/season.h"
#include "sample-survey/survey_plan.h"
#include "sample-survey/text.h"

#include <algorithm>
#include <vector>

namespace sample {

namespace {

Point somewhere(Chance& chance) {
    return {chance.between(-1250.0, 1040.0), chance.between(-590.0, 800.0)};
}

std::string bottomKind(const Bottom& bottom, Point p, Chance& chance) {
    if (chance.happens(bottom.weedShare(p))) {
        return "weed";
    }
    const double fromDam_m = distanceToLine(p, bottom.shore().dam());
    if (fromDam_m < 60.0 || bottom.slope(p) > 0.2) {
        return "rock";
    }
    const Ground ground = bottom.groundAt(p);
    const bool hard =
        ground == Ground::hump || ground == Ground::bar || ground == Ground::shelfEdge;
    return hard || (bottom.slope(p) > 0.12 && chance.happens(0.6)) ? "gravel" : "soft";
}

} // namespace

std::string weedNotesText(const Bottom& bottom, Chance& chance) {
    constexpr int inArm = 13;
    constexpr int elsewhere = 27;
    int arm = 0;
    int other = 0;
    std::string text = "lon,lat,kind,height_m\n";
    while (arm < inArm || other < elsewhere) {
        const Point p = somewhere(chance);
        const double depth_m = bottom.depth_m(p);
        if (depth_m < 0.8 || depth_m > 6.0) {
            continue;
        }
        int& count = bottom.inSallowArm(p) ? arm : other;
        if (count >= (bottom.inSallowArm(p) ? inArm : elsewhere)) {
            continue;
        }
        ++count;
        const double share = bottom.weedShare(p);
        std::string kind = "none";
        double height_m = 0.0;
        if (chance.happens(share)) {
            const bool thick = chance.happens(0.75 * share);
            kind = thick ? "thick" : "thin";
            height_m = std::min(0.8 * depth_m,
                                thick ? chance.between(0.6, 1.8) : chance.between(0.2, 0.6));
        }
        text += lonLatCells(p) + "," + kind + "," + fixed(height_m, 1) + "\n";
    }
    return text;
}

std::string leadLineText(const Bottom& bottom, Chance& chance) {
    constexpr std::size_t wanted = 25;
    std::vector<Point> points;
    for (const NamedPlace& place : bottom.places()) {
        if (bottom.depth_m(place.at) > 1.0) {
            points.push_back(place.at + Point{2.0 * chance.normal(), 2.0 * chance.normal()});
        }
    }
    while (points.size() < wanted) {
        const Point p = somewhere(chance);
        const bool shallow = bottom.depth_m(p) < 7.0;
        if (bottom.depth_m(p) > 1.0 && shallow != (points.size() % 3 == 0) &&
            !inClosedWater(bottom, p)) {
            points.push_back(p);
        }
    }
    std::string text = "lon,lat,depth_m,bottom\n";
    for (const Point p : points) {
        const std::string depth = fixed(bottom.depth_m(p) + 0.05 * chance.normal(), 1);
        const std::string kind = bottomKind(bottom, p, chance);
        text += lonLatCells(p);
        text += "," + depth;
        text += "," + kind;
        text += "\n";
    }
    return text;
}

std::string shorelineText(const Bottom& bottom) {
    std::string text = "{\"type\": \"FeatureCollection\", \"features\": [\n{\"type\": \"Feature\", "
                       "\"properties\": {\"name\": \"";
    text += waterName;
    text += "\"},\n\"geometry\": {\"type\": \"Polygon\", \"coordinates\": [\n" +
            ringText(bottom.shore().outer());
    for (const Line& island : bottom.shore().islands()) {
        text += ",\n" + ringText(island);
    }
    return text + "\n]}}\n]}\n";
}

std::string waterText(const Bottom& bottom) {
    std::vector<std::string> places;
    for (const NamedPlace& place : bottom.places()) {
        places.push_back("{\"name\": \"" + place.name + "\", " + lonLatKeys(place.at) + "}");
    }
    return std::string("{\n  \"name\": \"") + waterName +
           "\",\n  \"invented\": true,\n  \"time_zone\": \"Europe/London\",\n  \"chart_level_m\": "
           "0.00,\n  "
           "\"secchi_depth_m\": " +
           fixed(bottom.secchiDepth_m(), 1) + ",\n  \"launch\": {" + lonLatKeys(launchPlace()) +
           "},\n  \"places\": " + listText(places, "  ") + "\n}\n";
}

std::string houseRulesText(const Bottom& bottom) {
    return "{\n  \"rods_per_boat\": 3,\n"
           "  \"season\": {\"from\": \"09-05\", \"to\": \"12-12\"},\n"
           "  \"closed_waters\": [\n"
           "    {\"name\": \"Dam strip\", \"reason\": \"no boats within 110 m of the dam\",\n"
           "     \"geometry\": {\"type\": \"Polygon\", \"coordinates\": [\n" +
           ringText(closedWater(bottom)) +
           "\n     ]}}\n  ],\n"
           "  \"species\": [\n"
           "    {\"name\": \"pike\", \"keep\": 0, \"note\": \"all pike go back\"},\n"
           "    {\"name\": \"perch\", \"keep\": 3, \"least_length_mm\": 280},\n"
           "    {\"name\": \"trout\", \"keep\": 2, \"least_length_mm\": 300}\n  ],\n"
           "  \"notes\": [\n"
           "    \"Life jackets are worn in every boat.\",\n"
           "    \"Boats are back at the launch a quarter of an hour after sunset.\",\n"
           "    \"No live baits.\"\n  ]\n}\n";
}

} // namespace sample
