// SPDX-License-Identifier: GPL-3.0-or-later
// How the window looks and how it is left: themes, size of type, sizes of its parts, small screens.
#include "app/chart/first_track.h"
#include "app/chart/palette.h"
#include "app/days/first_hint.h"
#include "app/days/step_head.h"
#include "app/days/step_panel.h"
#include "app/days/tomorrow/tomorrow_day.h"
#include "app/edits/change_facts.h"
#include "app/widgets/amount_field.h"
#include "app/widgets/elided_label.h"
#include "tests/app/window/window_case.h"
#include "tests/support/desk_bowl.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLineEdit>
#include <QLocale>
#include <QMenu>
#include <QPushButton>
#include <QSpinBox>
#include <QSplitter>
#include <QTest>

namespace {

using chart::Inks;
using chart::Palette;
using preferences::Preferences;
using preferences::Theme;
using window_case::Window;

QColor paperOf(const QImage& picture) {
    return picture.pixelColor(3, 3);
}

TEST_F(Window, ShowsEachThemeOnWidgetsAndChartAtOnceAndKeepsIt) {
    ASSERT_TRUE(open().create(folder_.filePath("a.gpkg"), "a"));
    window_->resize(1280, 800);
    window_->show();
    for (const auto& [words, theme, inks] :
         {std::tuple("Dark", Theme::dark, Inks::dark),
          std::tuple("High contrast", Theme::highContrast, Inks::highContrast),
          std::tuple("Light", Theme::light, Inks::light)}) {
        action(words).trigger();
        const Palette& palette = Palette::of(inks);
        EXPECT_EQ(QApplication::palette().color(QPalette::WindowText), palette.ink) << words;
        EXPECT_EQ(canvas().content().inks, inks) << words;
        canvas().finishPainting();
        EXPECT_EQ(paperOf(canvas().grab().toImage()), palette.paper) << words;
        EXPECT_EQ(paperOf(window_->findChild<QWidget*>("topLine")->grab().toImage()), palette.paper)
            << words;
        EXPECT_EQ(Preferences().theme(), theme);
    }
}

QAction& strength(QWidget& window, const QString& layer, const QString& share) {
    for (QMenu* menu : window.findChildren<QMenu*>()) {
        if (menu->title() != layer) {
            continue;
        }
        for (QAction* action : menu->actions()) {
            if (action->text() == share) {
                return *action;
            }
        }
    }
    throw std::runtime_error("no such strength");
}

TEST_F(Window, DrawsALayerAsFaintlyAsTheUserWantsAndKeepsIt) {
    ASSERT_TRUE(open().create(folder_.filePath("bowl.gpkg"), "bowl"));
    ASSERT_TRUE(support::layBowl(open()));
    open().jobs().finishAll();
    window_->resize(1280, 800);
    window_->show();
    const auto inkOfTheMiddle = [this] {
        canvas().finishPainting();
        const QColor pixel = canvas().grab().toImage().pixelColor(canvas().rect().center());
        const QColor paper = Palette::screen().paper;
        return std::abs(pixel.red() - paper.red()) + std::abs(pixel.green() - paper.green()) +
               std::abs(pixel.blue() - paper.blue());
    };
    const int full = inkOfTheMiddle();
    strength(*window_, "Depths", "40 %").trigger();
    const int faint = inkOfTheMiddle();
    EXPECT_LT(faint, 0.6 * full);
    EXPECT_GT(faint, 0.2 * full);
    EXPECT_TRUE(strength(*window_, "Depths", "40 %").isChecked());
    // Another window, as after the next start.
    window_ = std::make_unique<window::MainWindow>(unnamed_);
    EXPECT_TRUE(strength(*window_, "Depths", "40 %").isChecked());
    EXPECT_EQ(chart::strengthOf(canvas().content(), chart::LayerKind::depth), 0.4);
    EXPECT_EQ(chart::strengthOf(canvas().content(), chart::LayerKind::weed), 1.0);
    strength(*window_, "Depths", "100 %").trigger();
    EXPECT_EQ(chart::strengthOf(canvas().content(), chart::LayerKind::depth), 1.0);
}

TEST_F(Window, HasNoStrengthForWhatWarnsOrTellsWhereToAnchor) {
    for (const chart::LayerKind kind :
         {chart::LayerKind::closed, chart::LayerKind::marks, chart::LayerKind::change}) {
        EXPECT_EQ(std::ranges::count(chart::fadingLayers, kind), 0);
    }
}

TEST_F(Window, ShowsAHintOnEachDayUntilItIsPutAway) {
    window_->resize(1280, 800);
    window_->show();
    for (int day = 0; day < 3; ++day) {
        window_->showDay(day);
        QCoreApplication::processEvents();
        QList<days::FirstHint*> seen;
        for (auto* hint : window_->findChildren<days::FirstHint*>()) {
            if (hint->isVisible()) {
                seen.append(hint);
            }
        }
        ASSERT_EQ(seen.size(), 1) << day;
        seen[0]->findChild<QAbstractButton*>()->click();
        EXPECT_FALSE(seen[0]->isVisible()) << day;
    }
    window_ = std::make_unique<window::MainWindow>(unnamed_);
    window_->resize(1280, 800);
    window_->show();
    QCoreApplication::processEvents();
    const auto isSeen = [this] {
        return std::ranges::any_of(window_->findChildren<days::FirstHint*>(),
                                   [](const QWidget* hint) { return hint->isVisible(); });
    };
    EXPECT_FALSE(isSeen());
    action("Show the hints again").trigger();
    EXPECT_TRUE(isSeen());
    // Where there is little room the open step has it.
    window_->resize(1024, 600);
    QCoreApplication::processEvents();
    EXPECT_FALSE(isSeen());
}

TEST_F(Window, MakesTypeLargerAndSmallerOnWidgetsAndChart) {
    const double usual = QApplication::font().pointSizeF();
    action("Larger type").trigger();
    EXPECT_NEAR(QApplication::font().pointSizeF(), 1.15 * usual, 0.01);
    EXPECT_EQ(canvas().content().typeScale, 1.15);
    EXPECT_EQ(Preferences().typeScale(), 1.15);
    for (int turn = 0; turn < 9; ++turn) {
        action("Larger type").trigger();
    }
    EXPECT_EQ(canvas().content().typeScale, Preferences::typeScales().back());
    action("Normal type").trigger();
    EXPECT_EQ(QApplication::font().pointSizeF(), usual);
    action("Smaller type").trigger();
    action("Smaller type").trigger();
    EXPECT_EQ(canvas().content().typeScale, Preferences::typeScales().front());
}

TEST_F(Window, ComesBackAsItWasLeft) {
    window_->show();
    window_->resize(1100, 700);
    window_->showDay(1);
    days::StepPanel& steps = window_->findChild<days::tomorrow::TomorrowDay*>()->steps();
    steps.openStep(5);
    const auto splitters = window_->findChildren<QSplitter*>();
    ASSERT_EQ(splitters.size(), 2);
    QSplitter& across = *splitters[0];
    across.setSizes({600, 500});
    QCoreApplication::processEvents();
    const QList<int> sizes = across.sizes();
    ASSERT_NE(sizes[1], 400);
    window_->close();
    window_ = std::make_unique<window::MainWindow>(unnamed_);
    window_->show();
    QCoreApplication::processEvents();
    EXPECT_EQ(window_->size(), QSize(1100, 700));
    EXPECT_EQ(window_->findChildren<QSplitter*>()[0]->sizes(), sizes);
    EXPECT_EQ(days().currentIndex(), 1);
    EXPECT_EQ(window_->findChild<days::tomorrow::TomorrowDay*>()->steps().openStep(), 5);
}

TEST_F(Window, ComesUpAsUsualWhereWhatWasKeptIsNoSense) {
    for (const char* part : {"place", "across", "down", "day", "steps"}) {
        Preferences::keepState(part, "\x7f nonsense");
    }
    window_ = std::make_unique<window::MainWindow>(unnamed_);
    EXPECT_EQ(days().currentIndex(), 0);
    EXPECT_GT(window_->width(), 800);
}

TEST_F(Window, FitsASmallScreenWithEveryStepOpenAndLargerType) {
    ASSERT_TRUE(open().create(folder_.filePath("bowl.gpkg"), "bowl"));
    ASSERT_TRUE(support::layBowl(open()));
    open().jobs().finishAll();
    window_->show();
    for (int turn = 0; turn < 2; ++turn) {
        window_->resize(1024, 600);
        for (int day = 0; day < 3; ++day) {
            window_->showDay(day);
            QCoreApplication::processEvents();
            EXPECT_EQ(window_->size(), QSize(1024, 600)) << day << ' ' << turn;
            const auto* bottom = window_->findChild<QWidget*>("said");
            EXPECT_TRUE(window_->rect().contains(
                QRect(bottom->mapTo(window_.get(), QPoint()), bottom->size())))
                << day << ' ' << turn;
        }
        action("Larger type").trigger();
    }
}

TEST_F(Window, WritesANameOfTwoHundredLettersInOneLineThatGivesWay) {
    ASSERT_TRUE(open().create(folder_.filePath("a.gpkg"), "a"));
    window_->resize(1024, 600);
    window_->show();
    QCoreApplication::processEvents();
    const auto* name = window_->findChild<widgets::ElidedLabel*>("waterName");
    ASSERT_NE(name, nullptr);
    const int height = name->height();
    const auto call = [this](const std::string& given) {
        edits::changeFacts(open(), "Name", [&](water::Water& water) { water.name = given; });
        QCoreApplication::processEvents();
    };
    call(std::string(200, 'n'));
    EXPECT_TRUE(name->isCut());
    EXPECT_EQ(name->toolTip(), name->text());
    EXPECT_EQ(window_->size(), QSize(1024, 600));
    EXPECT_LE(window_->windowTitle().size(), 100);
    call("Owl\nPoint\u202e east");
    EXPECT_EQ(name->text(), "Owl Point east");
    EXPECT_EQ(name->height(), height);
    EXPECT_EQ(window_->windowTitle(), "Owl Point east - Meremark");
}

TEST_F(Window, KeepsTheHeadsOfTheStepsWhereTheyAre) {
    window_->resize(1280, 800);
    window_->show();
    QCoreApplication::processEvents();
    auto& steps = window_->findChild<days::survey_day::SurveyDay*>()->steps();
    const auto heads = steps.findChildren<days::StepHead*>();
    QList<QRect> before;
    for (const auto* head : heads) {
        before.append(head->geometry());
    }
    for (auto* head : heads) {
        QTest::mouseClick(head, Qt::LeftButton);
        QCoreApplication::processEvents();
        for (qsizetype i = 0; i < heads.size(); ++i) {
            EXPECT_EQ(heads[i]->geometry(), before[i]) << "nothing that is pointed at moves";
        }
    }
}

TEST_F(Window, ShowsTheSoundingsBeforeTheWaterIsDrawn) {
    ASSERT_TRUE(open().create(folder_.filePath("bowl.gpkg"), "bowl"));
    window_->resize(1280, 800);
    window_->show();
    // As they come in, and before anything was worked out from them.
    chart::ChartContent content;
    auto water = std::make_shared<water::Water>(*open().water());
    const geo::LonLatRing square{{10.0, 52.0}, {10.01, 52.0}, {10.01, 52.01}, {10.0, 52.01}};
    water->frame = geo::WaterFrame::around(square).value();
    const std::vector<geo::LonLatPiece> shore{{square, {}}};
    content.derived.outline =
        std::make_shared<const geo::Outline>(geo::Outline::make(shore, *water->frame).value());
    soundings::SurveyDay day;
    std::vector<soundings::Sounding> all;
    for (int i = 0; i < 60000; ++i) {
        all.push_back({{10.0 + 1e-7 * i, 52.0 + 1e-7 * i}, units::Depth::metres(3.0), {}});
    }
    day.soundings = all;
    water->days = {day};
    content.water = water;
    content.shown = canvas().content().shown;
    EXPECT_TRUE(chart::showsFirstTrack(content));
    const auto track = chart::firstTrackOf(content);
    EXPECT_LE(track->size(), 40'000U) << "of a long day not every one";
    EXPECT_LT(geo::distance_m(track->front(), water->frame->toWater(all.front().place)), 0.1);
    EXPECT_LT(geo::distance_m(track->back(), water->frame->toWater(all.back().place)), 5.0)
        << "but its whole way";
    canvas().setContent(content);
    canvas().finishPainting();
    const QImage picture = canvas().grab().toImage();
    const QPointF middle = canvas().viewFrame().toScreen((*track)[track->size() / 2]);
    int dark = 0;
    for (int dx = -2; dx <= 2; ++dx) {
        for (int dy = -2; dy <= 2; ++dy) {
            const QColor pixel = picture.pixelColor(middle.toPoint() + QPoint(dx, dy));
            dark += pixel.lightness() < 150 ? 1 : 0;
        }
    }
    EXPECT_GT(dark, 0);
    for (const geo::WaterPoint place : {track->front(), track->back()}) {
        const QPointF pixel = canvas().viewFrame().toScreen(place);
        EXPECT_TRUE(QRectF(canvas().rect()).contains(pixel));
        EXPECT_GT(pixel.y(), 50.0) << "below what is said above them";
    }
}

/// The language and the direction of reading of somebody else, as long as it lives.
class Elsewhere {
public:
    Elsewhere(const QString& locale, Qt::LayoutDirection direction) {
        QLocale::setDefault(QLocale(locale));
        QApplication::setLayoutDirection(direction);
    }
    ~Elsewhere() {
        QLocale::setDefault(QLocale::c());
        QApplication::setLayoutDirection(Qt::LeftToRight);
    }
    Elsewhere(const Elsewhere&) = delete;
    Elsewhere& operator=(const Elsewhere&) = delete;
    Elsewhere(Elsewhere&&) = delete;
    Elsewhere& operator=(Elsewhere&&) = delete;
};

TEST_F(Window, ReadsAndKeepsTheSameInEveryLocaleAndDirectionOfReading) {
    for (const auto& [locale, direction] :
         {std::pair("tr_TR", Qt::LeftToRight), std::pair("de_DE", Qt::LeftToRight),
          std::pair("ar_EG", Qt::RightToLeft)}) {
        const Elsewhere elsewhere(locale, direction);
        window_ = std::make_unique<window::MainWindow>(unnamed_);
        const QString path = folder_.filePath(QStringLiteral("%1.GPKG").arg(locale));
        ASSERT_TRUE(open().create(path, "IŞIK gölü"));
        ASSERT_TRUE(support::layBowl(open()));
        window_->resize(1024, 600);
        window_->show();
        window_->showDay(1);
        open().planTomorrow();
        open().jobs().finishAll();
        QCoreApplication::processEvents();
        EXPECT_EQ(window_->windowTitle(), "IŞIK gölü - Meremark") << locale;
        // What is typed and shown keeps its point, whatever the machine's language writes.
        auto& tomorrow = *window_->findChild<days::tomorrow::TomorrowDay*>();
        tomorrow.steps().openStep(1);
        for (auto* field : tomorrow.findChildren<widgets::AmountField*>()) {
            if (field->accessibleName() == "Over-depth") {
                field->setFocus();
                field->selectAll();
                QTest::keyClicks(field, "0.35 m");
                QTest::keyClick(field, Qt::Key_Return);
                EXPECT_FALSE(field->isWrong()) << locale;
                EXPECT_EQ(field->text(), "0.35 m") << locale;
            }
        }
        EXPECT_NEAR(open().water()->plan.tackle.overDepth.inMetres(), 0.35, 1e-9) << locale;
        // Nothing is laid out of the window.
        for (const QWidget* each : window_->findChildren<QWidget*>()) {
            if (each->isVisible() && each->focusPolicy() != Qt::NoFocus) {
                const int left = each->mapTo(window_.get(), QPoint()).x();
                EXPECT_GE(left, 0) << locale << ": " << each->metaObject()->className();
                // Turned round, Qt lays the two halves of the window a pixel off.
                EXPECT_LE(left + each->width(), window_->width() + 1)
                    << locale << ": " << each->metaObject()->className();
            }
        }
        ASSERT_TRUE(open().finishKeeping());
    }
}

/// The greatest contrast to `ground` of the pixels from the left edge of the picture inwards.
double edgeContrast(const QImage& picture, const QColor& ground) {
    double most = 1.0;
    for (int x = 0; x < 4; ++x) {
        const QColor pixel = picture.pixelColor(x, picture.height() / 2);
        most = std::max(most, chart::contrast(chart::srgbFrom(pixel), chart::srgbFrom(ground)));
    }
    return most;
}

// Source of the limit: WCAG 2.2, success criterion 1.4.11.
TEST_F(Window, WhatCanBeOperatedHasAnEdgeThatCanBeMadeOutInEveryTheme) {
    for (const auto& [words, inks] :
         {std::pair("Dark", Inks::dark), std::pair("High contrast", Inks::highContrast),
          std::pair("Light", Inks::light)}) {
        action(words).trigger();
        const QColor card = Palette::of(inks).card;
        QWidget page;
        QComboBox combo(&page);
        combo.addItem("one");
        QSpinBox spin(&page);
        QLineEdit line(&page);
        QPushButton button("Go", &page);
        page.resize(300, 200);
        page.show();
        for (QWidget* each : std::initializer_list<QWidget*>{&combo, &spin, &line, &button}) {
            each->setGeometry(10, 10, 120, 28);
            const double seen = edgeContrast(each->grab().toImage(), card);
            EXPECT_GE(seen, 3.0) << words << ": " << each->metaObject()->className();
        }
        QCheckBox tick("tick", &page);
        tick.setGeometry(10, 60, 120, 28);
        tick.show();
        EXPECT_GE(edgeContrast(tick.grab().toImage(), card), 3.0) << words << ": a box to tick";
    }
}

} // namespace
