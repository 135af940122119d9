// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/keep_drawing.h"

#include "core/store/coverage.h"
#include "core/store/geopackage.h"
#include "core/store/kept_values.h"

#include <algorithm>
#include <bit>
#include <cmath>
#include <utility>

#include <nlohmann/json.hpp>

namespace store {

namespace {

using nlohmann::json;

std::string reportText(const surface::DrawReport& report) {
    json text{{"cell_m", report.cell.inMetres()},
              {"cells", report.cells},
              {"stiffness", report.stiffness},
              {"contour_stiffness", report.contourStiffness},
              {"chosen_from", report.chosenFrom},
              {"chosen_over_m2", report.chosenOver.inSquareMetres()},
              {"is_choice_kept", report.isChoiceKept},
              {"soundings_used", report.soundingsUsed},
              {"soundings_outside", report.soundingsOutside},
              {"spikes", report.spikes},
              {"passes", report.passes},
              {"iterations", report.iterations},
              {"draw_s", report.drawSeconds},
              {"trust_s", report.trustSeconds}};
    if (report.daysDiffer) {
        text["days_differ_m"] = report.daysDiffer->inMetres();
    }
    text["days_without_level"] = report.daysWithoutLevel;
    if (report.heldOut) {
        text["held_out"] = {{"median_m", report.heldOut->median_m},
                            {"mean_m", report.heldOut->mean_m},
                            {"soundings", report.heldOut->soundings}};
    }
    if (report.trustCurve) {
        const surface::TrustCurve& curve = *report.trustCurve;
        text["trust_curve"] = {{"factor", curve.factor},
                               {"of_distance", curve.ofDistance},
                               {"of_unevenness", curve.ofUnevenness},
                               {"farthest_m", curve.farthest_m},
                               {"floor_m", curve.floor_m}};
    }
    return text.dump();
}

/// What drawing on from here would start with is a number that can be.
bool isSound(const surface::DrawReport& report) {
    constexpr Range stiffness{0.0, 1e12};
    constexpr Range curve{-1e9, 1e9};
    const auto& trust = report.trustCurve;
    return stiffness.holds(report.stiffness) && stiffness.holds(report.contourStiffness) &&
           (!trust || (curve.holds(trust->factor) && curve.holds(trust->ofDistance) &&
                       curve.holds(trust->ofUnevenness) && curve.holds(trust->farthest_m) &&
                       curve.holds(trust->floor_m)));
}

std::optional<surface::DrawReport> reportFrom(const std::string& text) {
    try {
        const json read = json::parse(text);
        surface::DrawReport report;
        report.cell = units::Length::metres(read.at("cell_m").get<double>());
        report.cells = read.at("cells").get<std::size_t>();
        report.stiffness = read.at("stiffness").get<double>();
        report.contourStiffness = read.at("contour_stiffness").get<double>();
        report.soundingsUsed = read.at("soundings_used").get<std::size_t>();
        report.soundingsOutside = read.at("soundings_outside").get<std::size_t>();
        report.spikes = read.at("spikes").get<std::vector<std::size_t>>();
        report.passes = read.at("passes").get<int>();
        report.iterations = read.at("iterations").get<int>();
        report.drawSeconds = read.at("draw_s").get<double>();
        report.trustSeconds = read.at("trust_s").get<double>();
        // Files of earlier versions do not tell the next six.
        if (read.contains("days_differ_m")) {
            report.daysDiffer = units::Length::metres(read.at("days_differ_m").get<double>());
        }
        report.daysWithoutLevel = read.value("days_without_level", std::size_t{0});
        report.chosenFrom = read.value("chosen_from", std::size_t{0});
        report.chosenOver = units::Area::squareMetres(read.value("chosen_over_m2", 0.0));
        report.isChoiceKept = read.value("is_choice_kept", false);
        if (read.contains("trust_curve")) {
            const json& curve = read.at("trust_curve");
            report.trustCurve = surface::TrustCurve{
                curve.at("factor").get<double>(), curve.at("of_distance").get<double>(),
                curve.at("of_unevenness").get<double>(), curve.at("farthest_m").get<double>(),
                curve.at("floor_m").get<double>()};
        }
        if (read.contains("held_out")) {
            const json& held = read.at("held_out");
            report.heldOut = surface::HeldOutError{held.at("median_m").get<double>(),
                                                   held.at("mean_m").get<double>(),
                                                   held.at("soundings").get<int>()};
        }
        return isSound(report) ? std::optional(std::move(report)) : std::nullopt;
    } catch (const json::exception&) {
        return std::nullopt;
    }
}

std::vector<std::byte> bytesOf(const grid::Grid<surface::TrustName>& names) {
    std::vector<std::byte> bytes(names.size());
    for (std::size_t i = 0; i < names.size(); ++i) {
        bytes[i] = static_cast<std::byte>(names[i]);
    }
    return bytes;
}

std::optional<grid::Grid<surface::TrustName>> namesFrom(Blob bytes, const grid::GridFrame& frame) {
    if (bytes.size() != frame.size()) {
        return std::nullopt;
    }
    grid::Grid<surface::TrustName> names(frame);
    for (std::size_t i = 0; i < bytes.size(); ++i) {
        if (bytes[i] > static_cast<std::byte>(surface::TrustName::guess)) {
            return std::nullopt;
        }
        names[i] = static_cast<surface::TrustName>(bytes[i]);
    }
    return names;
}

/// Nothing for a frame that cannot be: no cells, or more than the standard for grids allows us.
std::optional<grid::GridFrame> frameAt(Connection& connection, Statement& row, int first) {
    constexpr std::int64_t mostCells = 40'000'000;
    const double cell_m = row.number(first + 2);
    const int cols = intAt(connection, row, first + 3);
    const int rows = intAt(connection, row, first + 4);
    if (!(cell_m > 0.0) || cols < 1 || rows < 1 || std::int64_t{cols} * rows > mostCells) {
        return std::nullopt;
    }
    return grid::GridFrame(row.number(first), row.number(first + 1), cell_m, cols, rows);
}

/// True where all cells that hold something hold what a depth or a trust can be.
bool areDepths(const grid::Grid<float>& values_m) {
    const Range range = rangeOf("depth_m");
    return std::ranges::all_of(values_m.values(), [range](float value_m) {
        return std::isnan(value_m) || range.holds(static_cast<double>(value_m));
    });
}

/// True where the water's cells are just those that hold a depth and a trust.
bool fits(const grid::Mask& mask, const grid::Grid<float>& depth_m,
          const grid::Grid<float>& trust_m) {
    for (std::size_t i = 0; i < depth_m.size(); ++i) {
        if (mask.isActive(i) == std::isnan(depth_m[i]) ||
            mask.isActive(i) == std::isnan(trust_m[i])) {
            return false;
        }
    }
    return true;
}

} // namespace

void keepDrawing(Connection& connection, const surface::DrawnWater& drawn,
                 const geo::WaterFrame& frame, water::Stamp stamp) {
    setFrame(connection, frame);
    const grid::GridFrame& cells = drawn.depth.frame();
    grid::Grid<float> depth_m(cells);
    depth_m.values() = drawn.depth.raw_m();
    keepCoverage(connection, "depth", "depth below chart level, positive down", depth_m);
    keepCoverage(connection, "trust", "half-width of the 95 % band round the depth",
                 drawn.trust.halfWidths_m());
    connection.execute("DELETE FROM drawing");
    Statement insert(connection, "INSERT INTO drawing (stamp, west_m, north_m, cell_m, cols, rows, "
                                 "trust_names, report) VALUES (?,?,?,?,?,?,?,?)");
    insert.run(std::bit_cast<std::int64_t>(stamp.value()), cells.west_m(), cells.north_m(),
               cells.cell_m(), cells.cols(), cells.rows(), Blob(bytesOf(drawn.trust.names())),
               reportText(drawn.report));
    setChanged(connection, "drawing");
}

namespace {

/// A drawing as the file holds it, not yet laid on an outline.
struct ReadDrawing {
    water::Stamp stamp;
    grid::Grid<surface::TrustName> names;
    grid::Grid<float> depth_m;
    grid::Grid<float> trust_m;
    surface::DrawReport report;
};

std::optional<ReadDrawing> readDrawing(Connection& connection) {
    Statement row(connection, "SELECT stamp, west_m, north_m, cell_m, cols, rows, trust_names, "
                              "report FROM drawing");
    row.ask();
    if (!row.next()) {
        return std::nullopt;
    }
    const auto cells = frameAt(connection, row, 1);
    auto report = reportFrom(row.text(7));
    if (!cells || !report) {
        return std::nullopt;
    }
    auto names = namesFrom(row.blob(6), *cells);
    auto depth_m = recallCoverage(connection, "depth", *cells);
    auto trust_m = recallCoverage(connection, "trust", *cells);
    if (!names || !depth_m || !trust_m || !areDepths(*depth_m) || !areDepths(*trust_m)) {
        return std::nullopt;
    }
    return ReadDrawing{water::Stamp(std::bit_cast<std::uint64_t>(row.wholeNumber(0))),
                       std::move(*names), std::move(*depth_m), std::move(*trust_m),
                       std::move(*report)};
}

} // namespace

bool isDrawingWhole(Connection& connection) {
    return readDrawing(connection).has_value();
}

std::optional<KeptDrawing> recallDrawing(Connection& connection, const geo::Outline& outline) {
    auto read = readDrawing(connection);
    if (!read) {
        return std::nullopt;
    }
    const grid::GridFrame cells = read->depth_m.frame();
    grid::Mask mask = grid::Mask::of(outline, cells);
    if (!fits(mask, read->depth_m, read->trust_m)) {
        return std::nullopt;
    }
    KeptDrawing kept;
    kept.stamp = read->stamp;
    kept.drawn.mask = std::move(mask);
    kept.drawn.depth = grid::DepthGrid(cells);
    kept.drawn.depth.raw_m() = std::move(read->depth_m.values());
    kept.drawn.trust = surface::TrustGrid(std::move(read->trust_m), std::move(read->names));
    kept.drawn.report = std::move(read->report);
    return kept;
}

} // namespace store
