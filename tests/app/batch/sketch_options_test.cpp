// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/batch/sketch_options.h"

#include "tests/app/batch/batch_call.h"

#include <CLI/CLI.hpp>

#include <functional>

namespace {

using batch::SketchOptions;
using batch_tests::call;
using batch_tests::expectRefused;

/// What these words leave in the options, beside the three that there have to be.
SketchOptions parsed(std::vector<std::string> words) {
    words.insert(words.begin(), {"a.nmea", "--shore", "s.geojson", "--water", "w.gpkg"});
    std::ranges::reverse(words); // CLI takes them from the back.
    CLI::App app;
    SketchOptions options;
    batch::laySketchOptions(app, options);
    app.parse(words);
    return options;
}

/// Everything in the options as text, one line each: two are alike where all of it is.
std::vector<std::string> linesOf(const SketchOptions& o) {
    std::vector<std::string> lines;
    for (const auto& path : o.soundings) {
        lines.push_back("soundings " + path.string());
    }
    const auto add = [&lines](const char* name, const std::string& text) {
        if (!text.empty()) {
            lines.push_back(std::string(name) + ' ' + text);
        }
    };
    const std::vector<std::pair<const char*, const std::filesystem::path*>> paths{
        {"shore", &o.shore},       {"water", &o.water},     {"weed", &o.weed},
        {"lead", &o.leadLine},     {"days", &o.surveyDays}, {"facts", &o.facts},
        {"rules", &o.houseRules},  {"grid", &o.grid},       {"trust", &o.trust},
        {"contours", &o.contours}, {"picture", &o.picture}, {"report", &o.report}};
    for (const auto& [name, path] : paths) {
        add(name, path->string());
    }
    const std::vector<std::pair<const char*, const std::optional<double>*>> numbers{
        {"cell", &o.cell_m},
        {"limit", &o.limit_m},
        {"area", &o.sectionArea_m2},
        {"draft", &o.draft_m},
        {"level", &o.level_m},
        {"chart level", &o.chartLevel_m},
        {"temperature", &o.temperature_c},
        {"speed", &o.soundSpeed_m_s},
        {"secchi", &o.secchi_m}};
    for (const auto& [name, number] : numbers) {
        add(name, *number ? std::to_string(**number) : "");
    }
    add("edges", o.bandEdges);
    add("columns", o.columns);
    add("unit", o.unit);
    add("crs", o.crs);
    add("tie", o.tieDays ? "yes" : "");
    add("delays", o.takeDelays ? "yes" : "");
    lines.push_back("minutes " + std::to_string(o.nextMinutes));
    return lines;
}

TEST(SketchOptions, WithoutAnyAreTheDefaults) {
    EXPECT_EQ(linesOf(parsed({})), (std::vector<std::string>{"soundings a.nmea", "shore s.geojson",
                                                             "water w.gpkg", "minutes 120"}));
}

TEST(SketchOptions, EachReachesTheValueThatItNamesAndNoOther) {
    struct Row {
        std::string option;
        std::string given;
        std::string line;
    };
    for (const Row& row : {Row{"--weed", "f", "weed f"},
                           {"--lead-line", "f", "lead f"},
                           {"--survey-days", "f", "days f"},
                           {"--facts", "f", "facts f"},
                           {"--house-rules", "f", "rules f"},
                           {"--grid", "f", "grid f"},
                           {"--trust", "f", "trust f"},
                           {"--contours", "f", "contours f"},
                           {"--picture", "f", "picture f"},
                           {"--report", "f", "report f"},
                           {"--cell", "2.5", "cell 2.500000"},
                           {"--limit-depth", "7.5", "limit 7.500000"},
                           {"--section-area", "12345.5", "area 12345.500000"},
                           {"--draft", "0.75", "draft 0.750000"},
                           {"--level", "-1.25", "level -1.250000"},
                           {"--chart-level", "-3.5", "chart level -3.500000"},
                           {"--water-temperature", "14.5", "temperature 14.500000"},
                           {"--assumed-sound-speed", "1480", "speed 1480.000000"},
                           {"--secchi-depth", "2.25", "secchi 2.250000"},
                           {"--band-edges", "1,3,5", "edges 1,3,5"},
                           {"--columns", "x=a", "columns x=a"},
                           {"--unit", "ft", "unit ft"},
                           {"--crs", "EPSG:25831", "crs EPSG:25831"}}) {
        std::vector<std::string> lines = linesOf(parsed({row.option, row.given}));
        ASSERT_EQ(lines.size(), 5U) << row.option;
        EXPECT_EQ(lines[3], row.line);
        EXPECT_EQ(lines[4], "minutes 120");
    }
    EXPECT_EQ(linesOf(parsed({"--next-minutes", "45"})).back(), "minutes 45");
    EXPECT_EQ(linesOf(parsed({"--tie-days"}))[3], "tie yes");
    EXPECT_EQ(linesOf(parsed({"--take-delays"}))[3], "delays yes");
    EXPECT_EQ(linesOf(parsed({}))[0], "soundings a.nmea");
}

TEST(SketchOptions, SeveralFilesOfSoundingsStayInTheirOrder) {
    EXPECT_EQ(parsed({"--cell", "2", "b.gpx", "c.csv"}).soundings,
              (std::vector<std::filesystem::path>{"a.nmea", "b.gpx", "c.csv"}));
}

TEST(SketchOptions, OutOfTheirRangeAreRefusedByName) {
    struct Row {
        std::string option;
        std::vector<std::string> good;
        std::vector<std::string> bad;
    };
    for (const Row& row :
         {Row{"--draft", {"0", "3"}, {"-0.01", "3.01", "deep", "nan"}},
          {"--water-temperature", {"-1", "40"}, {"-1.01", "40.01", "warm", "nan"}},
          {"--assumed-sound-speed", {"1300", "1700"}, {"1299.9", "1700.1", "fast", "nan"}},
          {"--level", {"-0.3", "100"}, {"high", "nan", "inf", "-10001"}},
          {"--chart-level", {"-0.3", "100"}, {"high", "nan", "inf", "10001"}},
          {"--cell", {"2"}, {"wide"}},
          {"--limit-depth", {"2"}, {"deep"}},
          {"--section-area", {"20000"}, {"large"}},
          {"--secchi-depth", {"2"}, {"clear"}},
          {"--next-minutes", {"0", "90"}, {"1.5", "long"}}}) {
        for (const std::string& good : row.good) {
            EXPECT_NO_THROW(static_cast<void>(parsed({row.option, good}))) << row.option << good;
        }
        for (const std::string& bad : row.bad) {
            expectRefused(
                call({"sketch", "a.nmea", "--shore", "s", "--water", "w.gpkg", row.option, bad}), 2,
                {row.option, "--help"});
        }
    }
}

TEST(SketchOptions, ThatHaveToBeThereAreAskedForByName) {
    expectRefused(call({"sketch", "--shore", "s", "--water", "w.gpkg"}), 2, {"soundings"});
    expectRefused(call({"sketch", "a.nmea", "--water", "w.gpkg"}), 2, {"--shore"});
    expectRefused(call({"sketch", "a.nmea", "--shore", "s"}), 2, {"--water"});
    expectRefused(call({"sketch", "a.nmea", "--shore", "s", "--water"}), 2, {"--water"});
}

} // namespace
