// SPDX-License-Identifier: GPL-3.0-or-later
// A tour of the real window through every step of the three days on the sample water, in each look
// that it can have. Every state leaves a picture; README's come from here (cmake/pictures.sh).
#include "app/chart/chart_canvas.h"
#include "app/days/step_panel.h"
#include "app/days/survey_day/survey_day.h"
#include "app/edits/set_plan.h"
#include "app/window/main_window.h"
#include "app/window/style.h"
#include "app/wording/tongue.h"

#include <QApplication>
#include <QDir>
#include <QScrollArea>
#include <QSettings>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <QTest>

#include <algorithm>
#include <array>
#include <map>
#include <memory>
#include <set>

#include <gtest/gtest.h>

namespace {

using preferences::Theme;

struct Look {
    const char* name;
    const char* language;
    Theme theme;
    QSize size;
};

constexpr int longEnough_ms = 120000;

/// The sample water as a folder of files makes it, with its log and a plan; made once for all
/// looks.
class SampleWater {
public:
    static QString path() {
        static const SampleWater made;
        return made.folder_.filePath(QStringLiteral("quernholt.gpkg"));
    }

private:
    SampleWater() {
        window::MainWindow window(folder_.filePath(QStringLiteral("unnamed")));
        auto& open = window.open();
        EXPECT_TRUE(open.create(folder_.filePath(QStringLiteral("quernholt.gpkg")),
                                QStringLiteral("Quernholt Water")));
        auto& survey = *window.findChild<days::survey_day::SurveyDay*>();
        QStringList files;
        for (const char* name :
             {"survey-days.csv", "water.json", "shoreline.geojson", "survey-2026-09-05.nmea",
              "survey-2026-09-12.gpx", "survey-2026-09-19.csv", "weed-notes.csv", "lead-line.csv",
              "house-rules.json", "log.csv"}) {
            files += QStringLiteral(MEREMARK_SAMPLE_DIR "/files/") + QString::fromLatin1(name);
        }
        survey.takeFiles(files);
        EXPECT_TRUE(QTest::qWaitFor(
            [&] {
                return !survey.isTakingFiles() && !open.jobs().isBusy() &&
                       open.isCurrent(water::Step::sections);
            },
            longEnough_ms));
        edits::setPlan(open, "Set plan", [](marks::Plan& plan) {
            plan.day.day = units::dayFrom("2026-11-29").value();
            plan.day.wind = {units::Bearing::degrees(300.0), units::Speed::metresPerSecond(6.0)};
        });
        open.planTomorrow();
        open.jobs().finishAll();
    }
    QTemporaryDir folder_;
};

class DeskTour : public testing::TestWithParam<Look> {
protected:
    void SetUp() override {
        const QString water = SampleWater::path(); // in English, as its files are
        QSettings().clear();
        wording::Tongue::speak(QString::fromLatin1(GetParam().language));
        preferences::Preferences kept;
        kept.setTheme(GetParam().theme);
        window::applyStyle(*qApp, kept.theme(), kept.typeScale());
        window_ = std::make_unique<window::MainWindow>(folder_.filePath(QStringLiteral("unnamed")));
        window_->resize(GetParam().size);
        window_->show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(window_.get()));
        window_->openWater(water);
        window_->open().opening().finishAll();
        settle();
        pictures_ = QDir(QStringLiteral(MEREMARK_PICTURE_DIR "/tour/") +
                         QString::fromLatin1(GetParam().name));
        ASSERT_TRUE(pictures_.mkpath(QStringLiteral("steps")));
    }
    void TearDown() override {
        window_.reset();
        wording::Tongue::speak(QStringLiteral("en"));
        QSettings().clear();
    }

    /// Waits until nothing is worked at, and the chart is painted as it is now.
    void settle() {
        ASSERT_TRUE(
            QTest::qWaitFor([this] { return !window_->open().jobs().isBusy(); }, longEnough_ms));
        QCoreApplication::processEvents();
        window_->findChild<chart::ChartCanvas*>()->finishPainting();
        QCoreApplication::processEvents();
    }

    QImage pictureOf(const QString& state) {
        QImage picture = window_->grab().toImage();
        EXPECT_TRUE(picture.save(pictures_.filePath(state + QStringLiteral(".png"))));
        return picture;
    }

    [[nodiscard]] days::StepPanel* panel() const {
        for (auto* each : window_->findChildren<days::StepPanel*>()) {
            if (each->isVisible()) {
                return each;
            }
        }
        return nullptr;
    }

    QTemporaryDir folder_;
    QDir pictures_;
    std::unique_ptr<window::MainWindow> window_;
};

/// Lightness of what there is most of, 0 black to 1 white.
double usualLightness(const QImage& picture) {
    std::map<QRgb, int> count;
    for (int y = 0; y < picture.height(); y += 3) {
        for (int x = 0; x < picture.width(); x += 3) {
            ++count[picture.pixel(x, y)];
        }
    }
    const auto most =
        std::ranges::max_element(count, {}, [](const auto& one) { return one.second; });
    return QColor(most->first).lightnessF();
}

std::size_t colours(const QImage& picture) {
    std::set<QRgb> found;
    for (int y = 0; y < picture.height(); y += 2) {
        for (int x = 0; x < picture.width(); x += 2) {
            found.insert(picture.pixel(x, y));
        }
    }
    return found.size();
}

/// In the colours that there is most of, at most 128: a tenth of the size, and nobody sees it.
QImage inFewColours(const QImage& picture) {
    std::map<QRgb, int> count;
    for (int y = 0; y < picture.height(); ++y) {
        for (int x = 0; x < picture.width(); ++x) {
            ++count[picture.pixel(x, y)];
        }
    }
    std::vector<std::pair<int, QRgb>> most;
    for (const auto& [colour, times] : count) {
        most.emplace_back(times, colour);
    }
    std::ranges::sort(most, std::greater());
    QList<QRgb> few;
    for (std::size_t i = 0; i < std::min<std::size_t>(most.size(), 128); ++i) {
        few.append(most[i].second);
    }
    return picture.convertToFormat(QImage::Format_Indexed8, few,
                                   Qt::ThresholdDither | Qt::AvoidDither);
}

TEST_P(DeskTour, ShowsEveryStepOfTheThreeDaysWholeAndInItsOwnLook) {
    const std::array days{"survey-day", "tomorrow", "looking-back"};
    for (int day = 0; day < 3; ++day) {
        window_->showDay(day);
        const open_water::OpenWater& open = window_->open();
        ASSERT_TRUE(
            QTest::qWaitFor([&] { return day != 1 || open.isPlanCurrent(); }, longEnough_ms));
        settle();
        ASSERT_NE(panel(), nullptr);
        for (int step = 0; step < panel()->count(); ++step) {
            SCOPED_TRACE(testing::Message()
                         << days[static_cast<std::size_t>(day)] << ' ' << step + 1);
            panel()->openStep(step);
            settle();
            const QImage picture = pictureOf(
                QStringLiteral("%1-%2").arg(days[static_cast<std::size_t>(day)]).arg(step + 1));
            // For the guide: the steps alone, in as few colours as do no harm.
            const QImage steps = inFewColours(panel()->grab().toImage());
            EXPECT_TRUE(steps.save(pictures_.filePath(QStringLiteral("steps/%1-%2.png")
                                                          .arg(days[static_cast<std::size_t>(day)])
                                                          .arg(step + 1))));
            EXPECT_EQ(window_->size(), GetParam().size) << "the window is pushed open";
            EXPECT_GT(colours(picture), 500U) << "the chart is not painted";
            EXPECT_EQ(usualLightness(picture) > 0.5, GetParam().theme != Theme::dark);
            const auto* scroll = panel()->findChild<QScrollArea*>();
            EXPECT_LE(scroll->widget()->width(), scroll->viewport()->width())
                << "what stands at the right of the step is cut";
        }
    }
}

const std::array looks{Look{"en-light-1024x600", "en", Theme::light, {1024, 600}},
                       Look{"en-light-1280x800", "en", Theme::light, {1280, 800}},
                       Look{"en-light-1920x1080", "en", Theme::light, {1920, 1080}},
                       Look{"en-dark-1280x800", "en", Theme::dark, {1280, 800}},
                       Look{"en-contrast-1280x800", "en", Theme::highContrast, {1280, 800}},
                       Look{"de-light-1024x600", "de", Theme::light, {1024, 600}},
                       Look{"de-dark-1920x1080", "de", Theme::dark, {1920, 1080}}};

INSTANTIATE_TEST_SUITE_P(Looks, DeskTour, testing::ValuesIn(looks), [](const auto& given) {
    QString name = QString::fromLatin1(given.param.name);
    return name.remove(QLatin1Char('-')).toStdString();
});

} // namespace

int main(int argc, char** argv) {
    const QTemporaryDir settings;
    QSettings::setPath(QSettings::NativeFormat, QSettings::UserScope, settings.path());
    const QApplication app(argc, argv);
    QStandardPaths::setTestModeEnabled(true);
    QCoreApplication::setOrganizationName(QStringLiteral("Meremark tests"));
    QCoreApplication::setApplicationName(QStringLiteral("tour"));
    testing::InitGoogleTest(&argc, argv);
    return RUN_ALL_TESTS();
}
