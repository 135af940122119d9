// SPDX-License-Identifier: GPL-3.0-or-later
// What the window's thread does when something is changed at the desk, and how long somebody at it
// waits: through the open water, its edits and the steps that show it. What runs in the background
// is not counted. The waters are made on the first run and kept where MEREMARK_DESK_WATERS says.

#include "app/chart/chart_canvas.h"
#include "app/days/chart_link.h"
#include "app/days/looking_back/looking_back_day.h"
#include "app/days/step_panel.h"
#include "app/days/survey_day/survey_day.h"
#include "app/days/tomorrow/tomorrow_day.h"
#include "app/edits/change_stay.h"
#include "app/edits/set_aside_soundings.h"
#include "app/edits/set_plan.h"
#include "app/window/main_window.h"
#include "app/window/style.h"
#include "core/store/write_water.h"
#include "core/water/steps/derive.h"
#include "tests/app/support/desk_water.h"
#include "tests/app/support/watchdog.h"
#include "tests/support/lattice_survey.h"

#include <QApplication>
#include <QEventLoop>
#include <QFileInfo>
#include <QSettings>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <QTimer>

#include <benchmark/benchmark.h>
#include <ctime>
#include <malloc.h>

#include <chrono>
#include <cstdio>
#include <filesystem>
#include <map>
#include <memory>

namespace {

using Clock = std::chrono::steady_clock;
constexpr int stays = 100'000;

/// Of this thread alone, whatever else the machine does.
double workedHere_s() {
    timespec now{};
    clock_gettime(CLOCK_THREAD_CPUTIME_ID, &now);
    return static_cast<double>(now.tv_sec) + 1e-9 * static_cast<double>(now.tv_nsec);
}

double secondsSince(Clock::time_point start) {
    return std::chrono::duration<double>(Clock::now() - start).count();
}

/// A little of the event loop, asleep where there is nothing to do.
void runLoop() {
    QEventLoop loop;
    QTimer::singleShot(5, &loop, &QEventLoop::quit);
    loop.exec();
}

/// The file of a water of that size, drawn; made where it is not there yet.
QString fileOf(std::size_t soundings) {
    const QByteArray folder = qgetenv("MEREMARK_DESK_WATERS");
    const auto path = std::filesystem::path(folder.toStdString()) /
                      ("desk-" + std::to_string(soundings) + ".gpkg");
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

/// A copy to be changed, so that each run begins alike.
QString copyOf(std::size_t soundings, const QTemporaryDir& folder) {
    const QString copy = folder.filePath(QStringLiteral("water.gpkg"));
    QFile::copy(fileOf(soundings), copy);
    return copy;
}

/// The three days at an open water, without the window round them.
struct Desk {
    explicit Desk(std::size_t soundings) {
        if (!open.open(copyOf(soundings, folder))) {
            std::exit(1);
        }
        open.deriveUpTo(water::Step::sections);
        open.jobs().finishAll();
    }
    void show(QWidget& day) {
        for (QWidget* each : {static_cast<QWidget*>(&survey), static_cast<QWidget*>(&tomorrow),
                              static_cast<QWidget*>(&back)}) {
            each->setVisible(each == &day);
        }
        rest();
    }
    /// Stops what was begun; what is being kept goes on, as it does at a desk.
    void rest() {
        QCoreApplication::processEvents();
        open.jobs().cancelAll();
        open.jobs().finishAll();
    }
    void undo() {
        open.undoStack().undo();
        rest();
    }

    QTemporaryDir folder;
    open_water::OpenWater open;
    preferences::Preferences preferences;
    days::ChartLink link{open, preferences};
    days::DayContext context{open, preferences, link};
    days::survey_day::SurveyDay survey{context};
    days::tomorrow::TomorrowDay tomorrow{context};
    days::looking_back::LookingBackDay back{context};
};

/// The desk that was asked for last: one at a time, as the largest takes a gigabyte.
std::pair<std::size_t, std::unique_ptr<Desk>>& lastDesk() {
    static std::pair<std::size_t, std::unique_ptr<Desk>> desk;
    return desk;
}

Desk& deskOf(std::size_t soundings) {
    auto& [size, desk] = lastDesk();
    if (!desk || size != soundings) {
        desk.reset();
        desk = std::make_unique<Desk>(soundings);
        size = soundings;
    }
    return *desk;
}

using Edit = void (*)(Desk&, int);

void setThreeAside(Desk& desk, int turn) {
    const auto first = static_cast<std::size_t>(100 + 10 * turn);
    edits::setAsideSoundings(desk.open, {{first, first + 1, first + 2}});
}

void changeAStay(Desk& desk, int turn) {
    const logbook::KeptLog& log = desk.open.water()->log;
    const logbook::Stay& stay =
        log[(log.size() / 2 + 977 * static_cast<std::size_t>(turn)) % log.size()];
    edits::changeStay(desk.open, "Change rods", stay.id, [](logbook::Stay& changed) {
        changed.rods = changed.rods.value_or(0) % 3 + 1;
    });
}

void changeThePlan(Desk& desk, int turn) {
    edits::setPlan(desk.open, "Set scope",
                   [turn](marks::Plan& plan) { plan.tackle.scope = 3.0 + 0.01 * (turn + 1); });
}

std::size_t memoryHeld() {
    const auto info = mallinfo2();
    return info.uordblks + info.hblkhd;
}

/// What one step of undo keeps, on average of many.
double undoBytes(Desk& desk, Edit edit) {
    constexpr int steps = 10;
    const auto settle = [&desk] {
        desk.rest();
        desk.open.finishKeeping();
    };
    settle();
    const std::size_t before = memoryHeld();
    for (int turn = 0; turn < steps; ++turn) {
        edit(desk, turn);
        desk.rest();
    }
    settle();
    const double held = static_cast<double>(memoryHeld()) - static_cast<double>(before);
    for (int turn = 0; turn < steps; ++turn) {
        desk.undo();
    }
    return held / steps;
}

/// The edit, and the steps shown anew when the event loop comes round.
void edited(benchmark::State& state, Edit edit, QWidget& (*day)(Desk&)) {
    static std::map<Edit, double> ofSmallest_s;
    Desk& desk = deskOf(static_cast<std::size_t>(state.range(0)));
    desk.show(day(desk));
    double worked_s = 0.0;
    int turn = 0;
    for (auto _ : state) {
        const auto start = Clock::now();
        const double before_s = workedHere_s();
        edit(desk, turn++);
        QCoreApplication::sendPostedEvents(nullptr, QEvent::MetaCall);
        const double taken_s = secondsSince(start);
        worked_s += workedHere_s() - before_s;
        state.SetIterationTime(taken_s);
        desk.undo();
    }
    const double mean_s = worked_s / std::max(turn, 1);
    state.counters["worked_ms"] = 1e3 * mean_s;
    const double smallest_s = ofSmallest_s.emplace(edit, mean_s).first->second;
    state.counters["x_smallest"] = mean_s / smallest_s;
    state.counters["undo_kB"] = undoBytes(desk, edit) / 1e3;
}

QWidget& surveyOf(Desk& desk) {
    return desk.survey;
}
QWidget& tomorrowOf(Desk& desk) {
    return desk.tomorrow;
}
QWidget& backOf(Desk& desk) {
    return desk.back;
}

/// Sees when the chart is painted with a map on it.
class Painted : public QObject {
public:
    explicit Painted(chart::ChartCanvas& canvas) : canvas_(canvas) {
        canvas.installEventFilter(this);
    }
    [[nodiscard]] bool withMap() const { return withMap_; }
    [[nodiscard]] bool whole() const { return whole_; }

protected:
    bool eventFilter(QObject* /*watched*/, QEvent* event) override {
        if (event->type() == QEvent::Paint) {
            withMap_ = withMap_ || canvas_.content().derived.drawn != nullptr;
            whole_ =
                canvas_.content().derived.sections != nullptr && !canvas_.content().age.isMapOld;
        }
        return false;
    }

private:
    chart::ChartCanvas& canvas_;
    bool withMap_ = false;
    bool whole_ = false;
};

void opening(benchmark::State& state) {
    const auto soundings = static_cast<std::size_t>(state.range(0));
    for (auto _ : state) {
        const QTemporaryDir folder;
        const QString path = copyOf(soundings, folder);
        window::MainWindow main(folder.filePath(QStringLiteral("waters")));
        main.resize(1400, 900);
        main.show();
        QCoreApplication::processEvents();
        Painted painted(*main.findChild<chart::ChartCanvas*>());
        support::Watchdog watchdog;
        const auto start = Clock::now();
        main.openWater(path);
        double first_s = 0.0;
        while (!painted.whole()) {
            QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents);
            first_s = first_s == 0.0 && painted.withMap() ? secondsSince(start) : first_s;
        }
        state.SetIterationTime(secondsSince(start));
        state.counters["first_picture_s"] = first_s;
        state.counters["longest_wait_ms"] =
            std::chrono::duration<double, std::milli>(watchdog.seen().longest).count();
        main.open().jobs().cancelAll();
    }
}

/// The window with a water open in it, all drawn and quiet.
struct AtWindow {
    explicit AtWindow(std::size_t soundings) : main(folder.filePath(QStringLiteral("waters"))) {
        main.resize(1400, 900);
        main.show();
        if (!main.open().open(copyOf(soundings, folder))) {
            std::exit(1);
        }
        settle();
    }
    void settle() {
        while (main.open().jobs().isBusy() || main.open().keeper().isKeeping()) {
            runLoop();
        }
        QCoreApplication::processEvents();
    }
    /// Lets `work` begin, runs the event loop until all is done, and tells how long it kept
    /// somebody waiting at most.
    double longestWait_ms(const std::function<void()>& work) {
        settle();
        support::Watchdog watchdog;
        work();
        settle();
        return std::chrono::duration<double, std::milli>(watchdog.seen().longest).count();
    }

    QTemporaryDir folder;
    window::MainWindow main;
};

using Work = void (*)(AtWindow&);

void drawAfresh(AtWindow& at) {
    at.main.open().drawAfresh();
}

void plan(AtWindow& at) {
    at.main.showDay(1);
    at.main.open().planTomorrow();
}

void typeIntoTheLog(AtWindow& at) {
    at.main.showDay(2);
    for (int turn = 0; turn < 10; ++turn) {
        const logbook::KeptLog& log = at.main.open().water()->log;
        edits::changeStay(at.main.open(), "Change rods", log[log.size() - 1].id,
                          [](logbook::Stay& stay) { stay.rods = stay.rods.value_or(0) % 3 + 1; });
        QCoreApplication::processEvents();
    }
}

QString fileToBringIn(const AtWindow& at) {
    return at.folder.filePath(QStringLiteral("more.nmea"));
}

void bringIn(AtWindow& at) {
    auto* survey = at.main.findChild<days::survey_day::SurveyDay*>();
    at.main.showDay(0);
    survey->takeFiles({fileToBringIn(at)});
    while (survey->isTakingFiles()) {
        runLoop();
    }
}

void waits(benchmark::State& state, Work work) {
    for (auto _ : state) {
        AtWindow at(static_cast<std::size_t>(state.range(0)));
        if (work == &bringIn) { // Writing it is no part of what somebody waits for.
            support::LatticeSurvey(200'000).writeLog(fileToBringIn(at).toStdString());
        }
        const auto start = Clock::now();
        const double longest_ms = at.longestWait_ms([&] { work(at); });
        state.SetIterationTime(secondsSince(start));
        state.counters["longest_wait_ms"] = longest_ms;
    }
}

void eachSize(benchmark::internal::Benchmark* bench) {
    bench->Arg(10'000)->Arg(100'000)->Arg(1'000'000)->Iterations(10)->UseManualTime()->Unit(
        benchmark::kMillisecond);
}

void onceAtWindow(benchmark::internal::Benchmark* bench) {
    bench->Arg(100'000)->Iterations(1)->UseManualTime()->Unit(benchmark::kMillisecond);
}

} // namespace

BENCHMARK_CAPTURE(edited, three_soundings_set_aside, setThreeAside, surveyOf)->Apply(eachSize);
BENCHMARK_CAPTURE(edited, a_stay_changed, changeAStay, backOf)->Apply(eachSize);
BENCHMARK_CAPTURE(edited, a_plan_field, changeThePlan, tomorrowOf)->Apply(eachSize);
BENCHMARK(opening)->Arg(1'000'000)->Iterations(3)->UseManualTime()->Unit(benchmark::kSecond);
BENCHMARK_CAPTURE(waits, bringing_in, bringIn)->Apply(onceAtWindow);
BENCHMARK_CAPTURE(waits, drawing, drawAfresh)->Apply(onceAtWindow);
BENCHMARK_CAPTURE(waits, planning, plan)->Apply(onceAtWindow);
BENCHMARK_CAPTURE(waits, typing_into_the_log, typeIntoTheLog)->Apply(onceAtWindow);

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
    lastDesk().second.reset(); // while there is an application
    return 0;
}
