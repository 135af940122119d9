// SPDX-License-Identifier: GPL-3.0-or-later
// How long the chart keeps the hand waiting for a frame: panned and zoomed in the whole window, at
// 1600 x 900, with a million soundings, four million cells, five thousand zones and all layers on.
// A frame is what happens between a move of the hand and the picture on the screen (an offscreen
// raster): the view, the read-out, cut and chart painted. What is painted beside the window when
// the hand rests is told for itself. The water is made on the first run and kept where
// MEREMARK_DESK_WATERS says.

#include "app/chart/chart_canvas.h"
#include "app/chart/chart_painter.h"
#include "app/window/main_window.h"
#include "app/window/style.h"
#include "core/store/write_water.h"
#include "core/water/steps/derive.h"
#include "tests/app/support/desk_water.h"

#include <QApplication>
#include <QMouseEvent>
#include <QSettings>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <QWheelEvent>

#include <benchmark/benchmark.h>

#include <algorithm>
#include <chrono>
#include <cmath>
#include <cstdio>
#include <filesystem>
#include <memory>
#include <vector>

namespace {

using Clock = std::chrono::steady_clock;

constexpr std::size_t soundings = 1'000'000;
constexpr int stays = 2'000;
constexpr int zonesAcross = 71; // 5,041 of them
constexpr QSize canvasSize{1600, 900};
constexpr int frames = 600;

double millisecondsSince(Clock::time_point start) {
    return std::chrono::duration<double, std::milli>(Clock::now() - start).count();
}

/// The file of the water, drawn; made where it is not there yet.
QString waterFile() {
    const QByteArray folder = qgetenv("MEREMARK_DESK_WATERS");
    const auto path = std::filesystem::path(folder.toStdString()) / "canvas.gpkg";
    if (!std::filesystem::exists(path)) {
        std::fprintf(stderr, "drawing a water of %zu soundings first\n", soundings);
        base::Progress quiet;
        const water::Water water = support::deskWater(soundings, stays);
        const auto derived = water::derive(water, {}, water::Step::sections, quiet);
        if (!derived || !store::writeWater(path, water, *derived, {}, quiet)) {
            std::fprintf(stderr, "it cannot be drawn and kept\n");
            std::exit(1);
        }
    }
    return QString::fromStdString(path.string());
}

/// Five thousand humps and drop-offs in rows over the water: the bottom of the made-up water has
/// few of its own.
std::shared_ptr<const structure::ZoneMap> manyZones(const geo::Box& water) {
    auto map = std::make_shared<structure::ZoneMap>();
    const double step_m = water.width_m() / zonesAcross;
    for (int row = 0; row < zonesAcross; ++row) {
        for (int column = 0; column < zonesAcross; ++column) {
            const double x = water.west_m + (column + 0.2) * step_m;
            const double y = water.south_m + (row + 0.2) * step_m;
            const double side = 0.6 * step_m;
            structure::Zone zone;
            zone.kind =
                (row + column) % 2 == 0 ? structure::ZoneKind::hump : structure::ZoneKind::dropOff;
            zone.name = "Zone " + std::to_string(map->zones.size() + 1);
            geo::Ring outer;
            for (int corner = 0; corner < 24; ++corner) {
                const double angle = 0.2618 * corner;
                outer.push_back({x + 0.5 * side * (1.0 + std::cos(angle)),
                                 y + 0.5 * side * (1.0 + std::sin(angle))});
            }
            zone.middle = {x + 0.5 * side, y + 0.5 * side};
            zone.area = units::Area::squareMetres(0.78 * side * side);
            if (zone.kind == structure::ZoneKind::dropOff) {
                zone.topEdges = {geo::Path(outer.begin(), outer.begin() + 12)};
                zone.feet = {geo::Path(outer.begin() + 12, outer.end())};
            }
            zone.pieces = {geo::Piece{outer, {}}};
            map->zones.push_back(std::move(zone));
        }
    }
    return map;
}

/// The window with all of it on its chart, quiet.
struct AtChart {
    AtChart() : main(folder.filePath(QStringLiteral("waters"))) {
        const QString copy = folder.filePath(QStringLiteral("water.gpkg"));
        QFile::copy(waterFile(), copy);
        main.resize(2400, 1300);
        main.show();
        if (!main.open().open(copy)) {
            std::exit(1);
        }
        main.showDay(1);
        main.open().planTomorrow();
        while (main.open().jobs().isBusy() || main.open().keeper().isKeeping()) {
            QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents);
        }
        canvas = main.findChild<chart::ChartCanvas*>();
        canvas->setFixedSize(canvasSize);
        chart::ChartContent content = canvas->content();
        content.shown = {chart::allLayerKinds.begin(), chart::allLayerKinds.end()};
        content.derived.structure = manyZones(chart::waterBoxOf(content));
        canvas->setContent(content);
        canvas->finishPainting();
        QCoreApplication::processEvents();
    }

    QTemporaryDir folder;
    window::MainWindow main;
    chart::ChartCanvas* canvas = nullptr;
};

std::unique_ptr<AtChart>& theChart() {
    static std::unique_ptr<AtChart> at;
    return at;
}

AtChart& atChart() {
    if (!theChart()) {
        theChart() = std::make_unique<AtChart>();
    }
    return *theChart();
}

/// Each frame by itself, from the move of the hand to the painted window.
void tellFrames(benchmark::State& state, std::vector<double> taken_ms) {
    std::ranges::sort(taken_ms);
    const auto at = [&](double share) {
        return taken_ms[static_cast<std::size_t>(share * static_cast<double>(taken_ms.size() - 1))];
    };
    state.counters["median_ms"] = at(0.5);
    state.counters["p99_ms"] = at(0.99);
    state.counters["worst_ms"] = taken_ms.back();
    double sum_ms = 0.0;
    for (const double each_ms : taken_ms) {
        sum_ms += each_ms;
    }
    state.SetIterationTime(1e-3 * sum_ms);
}

void sendMouse(chart::ChartCanvas& canvas, QEvent::Type type, QPointF at, bool isHeld) {
    QMouseEvent event(type, at, canvas.mapToGlobal(at),
                      type == QEvent::MouseMove ? Qt::NoButton : Qt::LeftButton,
                      isHeld ? Qt::LeftButton : Qt::NoButton, Qt::NoModifier);
    QCoreApplication::sendEvent(&canvas, &event);
}

void pan(benchmark::State& state) {
    AtChart& at = atChart();
    for (auto _ : state) {
        at.canvas->showWholeWater();
        at.canvas->setViewFrame(at.canvas->viewFrame().zoomed(4.0, {800.0, 450.0}));
        at.canvas->finishPainting();
        std::vector<double> taken_ms;
        QPointF hand(800.0, 450.0);
        sendMouse(*at.canvas, QEvent::MouseButtonPress, hand, true);
        for (int frame = 0; frame < frames; ++frame) {
            hand += QPointF(frame / 60 % 2 == 0 ? 5.0 : -5.0, frame / 30 % 2 == 0 ? 3.0 : -3.0);
            const auto start = Clock::now();
            sendMouse(*at.canvas, QEvent::MouseMove, hand, true);
            QCoreApplication::processEvents();
            taken_ms.push_back(millisecondsSince(start));
        }
        sendMouse(*at.canvas, QEvent::MouseButtonRelease, hand, false);
        tellFrames(state, std::move(taken_ms));
        at.canvas->finishPainting();
    }
}

void zoom(benchmark::State& state) {
    AtChart& at = atChart();
    for (auto _ : state) {
        at.canvas->showWholeWater();
        at.canvas->finishPainting();
        std::vector<double> taken_ms;
        const QPointF where(700.0, 400.0);
        for (int frame = 0; frame < frames; ++frame) {
            const int turn = frame / 40 % 2 == 0 ? 20 : -20;
            const auto start = Clock::now();
            QWheelEvent wheel(where, at.canvas->mapToGlobal(where), {}, {0, turn}, Qt::NoButton,
                              Qt::NoModifier, Qt::NoScrollPhase, false);
            QCoreApplication::sendEvent(at.canvas, &wheel);
            QCoreApplication::processEvents();
            taken_ms.push_back(millisecondsSince(start));
        }
        tellFrames(state, std::move(taken_ms));
        at.canvas->finishPainting();
    }
}

/// All layers anew, as it is done beside the window once the hand rests.
void wholeSheet(benchmark::State& state) {
    AtChart& at = atChart();
    at.canvas->showWholeWater();
    for (auto _ : state) {
        const auto start = Clock::now();
        at.canvas->finishPainting();
        state.SetIterationTime(1e-3 * millisecondsSince(start));
    }
}

} // namespace

BENCHMARK(pan)->Iterations(3)->UseManualTime()->Unit(benchmark::kMillisecond);
BENCHMARK(zoom)->Iterations(3)->UseManualTime()->Unit(benchmark::kMillisecond);
BENCHMARK(wholeSheet)->Iterations(5)->UseManualTime()->Unit(benchmark::kMillisecond);

int main(int argc, char** argv) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    const QTemporaryDir ours;
    if (!qEnvironmentVariableIsSet("MEREMARK_DESK_WATERS")) {
        qputenv("MEREMARK_DESK_WATERS", ours.path().toUtf8());
    }
    // Nothing that the user of the machine has set is read or changed.
    QSettings::setPath(QSettings::NativeFormat, QSettings::UserScope, ours.path());
    QStandardPaths::setTestModeEnabled(true);
    QApplication app(argc, argv);
    window::applyStyle(app);
    benchmark::Initialize(&argc, argv);
    benchmark::RunSpecifiedBenchmarks();
    theChart().reset(); // while there is an application
    return 0;
}
