// SPDX-License-Identifier: GPL-3.0-or-later
// The three days at the desk on the sample water, walked with mouse and keys: soundings to
// sections; conditions to a printed sheet; a stay with a fish entered and seen in the rates. Each
// walk leaves a picture of the window beside the build.
#include "app/chart/chart_canvas.h"
#include "app/days/looking_back/looking_back_day.h"
#include "app/days/step_panel.h"
#include "app/days/survey_day/set_aside_part.h"
#include "app/days/survey_day/survey_day.h"
#include "app/days/tomorrow/tomorrow_day.h"
#include "app/paper/day_sheet.h"
#include "app/side_view/side_view.h"
#include "app/widgets/amount_field.h"
#include "app/widgets/entry_line.h"
#include "app/widgets/plain_table.h"
#include "app/window/bottom_line.h"
#include "app/window/main_window.h"
#include "app/window/style.h"
#include "core/water/document/swap_parts.h"
#include "core/water/questions/review_log.h"

#include <QApplication>
#include <QComboBox>
#include <QDir>
#include <QLabel>
#include <QMouseEvent>
#include <QPushButton>
#include <QSettings>
#include <QSignalSpy>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <QTest>

#include <algorithm>
#include <memory>

namespace {

constexpr int longEnough_ms = 60000;

QString sample(const QString& name) {
    return QStringLiteral(MEREMARK_SAMPLE_DIR "/files/") + name;
}

/// The visible button with these words.
QPushButton* button(QWidget& in, const QString& words) {
    for (QPushButton* each : in.findChildren<QPushButton*>()) {
        if (each->text() == words && each->isVisible()) {
            return each;
        }
    }
    return nullptr;
}

/// The visible field with this name for the screen reader, which is its label.
template <class Field>
Field* field(QWidget& in, const QString& label) {
    for (Field* each : in.findChildren<Field*>()) {
        if (each->accessibleName() == label && each->isVisible()) {
            return each;
        }
    }
    return nullptr;
}

void typeInto(QLineEdit& line, const QString& text) {
    line.setFocus();
    line.selectAll();
    QTest::keyClicks(&line, text);
    QTest::keyClick(&line, Qt::Key_Return);
}

} // namespace

class DeskWalk : public QObject {
    Q_OBJECT

private slots:
    void initTestCase() {
        QStandardPaths::setTestModeEnabled(true);
        QCoreApplication::setOrganizationName(QStringLiteral("Meremark tests"));
        QDir().mkpath(QStringLiteral(MEREMARK_PICTURE_DIR));
        openWindow();
        drawTheSample();
        closeWindow();
        QVERIFY(QFile::rename(walk(), drawn_));
    }

    /// Each begins with a window of its own on the sample as it was drawn, so that none leans on
    /// what another has left.
    void init() {
        QVERIFY(QFile::copy(drawn_, walk()));
        openWindow();
        QVERIFY(open().open(walk()));
        settle();
    }

    void cleanup() {
        closeWindow();
        for (const QString& water : {walk(), next()}) {
            QVERIFY(!QFile::exists(water) || QFile::remove(water));
        }
    }

    void surveyDayLeadsFromFilesToNamedSections() {
        // In the file, and in what is drawn from it.
        QCOMPARE(open().water()->name, std::string("Quernholt Water"));
        QCOMPARE(open().water()->days.size(), std::size_t{3});
        QVERIFY(open().derived().sections->sections.size() >= 10);
        const auto agreed = open().water()->days[1].agreedOffset;
        QVERIFY(agreed && std::abs(agreed->inMetres() - 0.10) < 0.05);
        nameASection();
        window_->grab().save(QStringLiteral(MEREMARK_PICTURE_DIR "/survey-day.png"));
    }

    void limitTypedInFeetMovesTheBands() {
        survey_->steps().openStep(4);
        auto* limit = field<widgets::AmountField>(*survey_, QStringLiteral("Limit"));
        QVERIFY(limit != nullptr);
        typeInto(*limit, QStringLiteral("20 ft"));
        QCOMPARE(open().water()->settings.limit->inFeet(), 20.0);
        settle();
        typeInto(*limit, QStringLiteral("deep"));
        QVERIFY(limit->isWrong());
        QCOMPARE(open().water()->settings.limit->inFeet(), 20.0);
        open().undoStack().undo();
        QVERIFY(!open().water()->settings.limit);
        settle();
    }

    void zonesInTheListAndOnTheChartAnswerEachOther() {
        window_->showDay(0);
        survey_->steps().openStep(4);
        auto* list = field<widgets::PlainTable>(*survey_, QStringLiteral("Zones"));
        auto* canvas = window_->findChild<chart::ChartCanvas*>();
        const auto& zones = open().derived().structure->zones;
        QVERIFY(list != nullptr);
        QCOMPARE(list->rowCount(), static_cast<int>(zones.size()));
        canvas->showWholeWater();
        const auto largest = std::max_element(
            zones.begin(), zones.end(), [](const structure::Zone& a, const structure::Zone& b) {
                return a.area.inSquareMetres() < b.area.inSquareMetres();
            });
        const int row = static_cast<int>(largest - zones.begin());
        QTest::mouseClick(canvas, Qt::LeftButton, {},
                          canvas->viewFrame().toScreen(largest->middle).toPoint());
        QCOMPARE(list->chosen(), row);
        QVERIFY(says(QString::fromStdString(largest->name) + QStringLiteral(": ")));
        list->setFocus();
        QTest::keyClick(list, row > 0 ? Qt::Key_Up : Qt::Key_Down);
        QCOMPARE(canvas->content().selection.zone, std::optional(row > 0 ? row - 1 : row + 1));
        // Under the next step but one a click means a section again.
        survey_->steps().openStep(6);
        QVERIFY(!canvas->content().selection.zone);
        const auto& sections = open().derived().sections->sections;
        QTest::mouseClick(canvas, Qt::LeftButton, {},
                          canvas->viewFrame().toScreen(sections[1].middle).toPoint());
        QCOMPARE(canvas->content().selection.section, std::optional(1));
        QVERIFY(says(QStringLiteral("rod-hours")) || says(QStringLiteral("Never")));
    }

    void leadLineIsPointedAtTypedChangedAndRemoved() {
        window_->showDay(0);
        survey_->steps().openStep(0);
        const auto byLead = [this] { return open().water()->leadLine; };
        const std::size_t before = byLead().size();
        auto* depth = field<QLineEdit>(*survey_, QStringLiteral("Depth"));
        auto* place = field<QLineEdit>(*survey_, QStringLiteral("Place"));
        auto* bottom = field<QComboBox>(*survey_, QStringLiteral("Bottom"));
        QVERIFY(depth != nullptr && place != nullptr && bottom != nullptr);
        QPushButton* onChart = button(*survey_, QStringLiteral("Sound on chart"));
        QVERIFY(!onChart->isEnabled()); // No depth yet.
        QTest::keyClicks(depth, QStringLiteral("12ft"));
        bottom->setCurrentIndex(2);
        QVERIFY(onChart->isEnabled());
        QTest::mouseClick(onChart, Qt::LeftButton);
        auto* canvas = window_->findChild<chart::ChartCanvas*>();
        QTest::mouseClick(canvas, Qt::LeftButton, {}, canvas->rect().center());
        QTest::keyClick(canvas, Qt::Key_Escape);
        QCOMPARE(byLead().size(), before + 1);
        QVERIFY(std::abs(byLead().back().depth.inFeet() - 12.0) < 1e-9);
        QVERIFY(byLead().back().bottom == soundings::Bottom::gravel);

        place->setText(QStringLiteral("55.195, 3.104"));
        depth->setText(QStringLiteral("3.6 m"));
        QTest::mouseClick(button(*survey_, QStringLiteral("Add")), Qt::LeftButton);
        QCOMPARE(byLead().size(), before + 2);
        QVERIFY(byLead().back().place == (geo::LonLat{3.104, 55.195}));
        QVERIFY(depth->text().isEmpty()); // Ready for the next.
        open().undoStack().undo();
        open().undoStack().undo();
        QCOMPARE(byLead().size(), before);
        settle();
    }

    void soundingsAreSetAsideAndTakenBackByHand() {
        const auto kept = [this] { return open().derived().checked->survey.keptCount(); };
        survey_->steps().openStep(2);
        const std::size_t before = kept();
        goRound(QStringLiteral("Set aside..."));
        QVERIFY(!open().water()->days[0].setAsideByHand.empty());
        settle();
        QVERIFY(kept() < before);
        goRound(QStringLiteral("Take back..."));
        QVERIFY(open().water()->days[0].setAsideByHand.empty());
        settle();
        QVERIFY(kept() >= before); // What the rules had set aside there is back as well.
        open().undoStack().undo();
        open().undoStack().undo();
        settle();
        QCOMPARE(kept(), before);
    }

    void whatWasSetAsideIsGoneThroughOneByOne() {
        window_->showDay(0);
        survey_->steps().openStep(2);
        auto* reasons = survey_->findChild<days::survey_day::SetAsidePart*>()
                            ->findChild<widgets::PlainTable*>();
        QVERIFY(reasons != nullptr && reasons->rowCount() > 0);
        QTest::mouseClick(reasons->viewport(), Qt::LeftButton, {},
                          reasons->visualRect(reasons->model()->index(0, 0)).center());
        QVERIFY(says(QStringLiteral("1 of ")));
        const auto* side = window_->findChild<side_view::SideView*>();
        QVERIFY(side->showsTrack() && side->profile().chosen);
        const std::size_t first = *side->profile().chosen;
        // The button is seen to go down before it acts.
        QTest::keyClick(window_.get(), Qt::Key_Right, Qt::AltModifier);
        QTRY_VERIFY_WITH_TIMEOUT(says(QStringLiteral("2 of ")), 5000);
        QVERIFY(*side->profile().chosen != first);
        QTest::keyClick(window_.get(), Qt::Key_Left, Qt::AltModifier);
        QTRY_VERIFY_WITH_TIMEOUT(says(QStringLiteral("1 of ")), 5000);
        QCOMPARE(*side->profile().chosen, first);
        QTRY_VERIFY_WITH_TIMEOUT(!open().jobs().isBusy(), longEnough_ms);
        window_->grab().save(QStringLiteral(MEREMARK_PICTURE_DIR "/set-aside.png"));
        // Taken back at once, before the water is drawn again; undone as quickly.
        const water::Water before = *open().water();
        QTest::mouseClick(button(*survey_, QStringLiteral("Keep this one")), Qt::LeftButton);
        QVERIFY(!(*open().water() == before));
        QTRY_VERIFY_WITH_TIMEOUT(says(QStringLiteral("kept by hand")), 5000);
        open().undoStack().undo();
        QVERIFY(*open().water() == before);
        settle();
    }

    void soundingsAreBrushedAsideInTheSideViewUntilEscape() {
        window_->showDay(0);
        survey_->steps().openStep(2);
        const auto byHand = [this] {
            std::size_t count = 0;
            for (const soundings::SurveyDay& day : open().water()->days) {
                count += day.setAsideByHand.size();
            }
            return count;
        };
        const water::Water before = *open().water();
        QPushButton* aside = button(*survey_, QStringLiteral("Set aside..."));
        QTest::mouseClick(aside, Qt::LeftButton);
        auto* side = window_->findChild<side_view::SideView*>();
        auto* canvas = window_->findChild<chart::ChartCanvas*>();
        QVERIFY(side->showsTrack() && side->profile().brush && aside->isChecked());
        QVERIFY(canvas->tool() == chart::ToolKind::lasso);
        QVERIFY(window_->bottomLine().said().contains(QStringLiteral("To set aside")));
        brushAcross(*side);
        const std::size_t once = byHand();
        QVERIFY(once > 0);
        QVERIFY(window_->bottomLine().said().contains(
            QStringLiteral("%L1 set aside.").arg(static_cast<qulonglong>(once))));
        // What was brushed looks so at once, and the brush stays in the hand.
        QVERIFY(side->profile().brush && aside->isChecked());
        window_->grab().save(QStringLiteral(MEREMARK_PICTURE_DIR "/brush.png"));
        QTest::mouseClick(button(*survey_, QStringLiteral("Take back...")), Qt::LeftButton);
        QVERIFY(!aside->isChecked());
        brushAcross(*side);
        QVERIFY(byHand() < once);
        QTest::keyClick(canvas, Qt::Key_Escape);
        QVERIFY(!side->profile().brush && canvas->tool() == chart::ToolKind::pan);
        open().undoStack().undo();
        QCOMPARE(byHand(), once); // Each stroke is one act.
        open().undoStack().undo();
        QVERIFY(*open().water() == before);
        settle();
    }

    void worstCrossingsLeadToTheirPlacesAndBack() {
        window_->showDay(0);
        survey_->steps().openStep(2);
        auto* worst = field<widgets::PlainTable>(*survey_, QStringLiteral("Worst crossings"));
        QVERIFY(worst != nullptr);
        QCOMPARE(worst->rowCount(), 10);
        emit worst->rowChosen(3);
        QCOMPARE(worst->chosen(), 3);
        QVERIFY(says(QStringLiteral("on the earlier pass")));
        auto* canvas = window_->findChild<chart::ChartCanvas*>();
        auto* side = window_->findChild<side_view::SideView*>();
        QVERIFY(side->showsTrack() && side->profile().chosen);
        QTRY_VERIFY_WITH_TIMEOUT(!open().jobs().isBusy(), longEnough_ms);
        window_->grab().save(QStringLiteral(MEREMARK_PICTURE_DIR "/crossings.png"));
        // The one shown is in the middle of the chart; another place chooses none, it again does.
        emit worst->rowChosen(0);
        QCOMPARE(worst->chosen(), 0);
        emit worst->rowChosen(3);
        QTest::mouseClick(canvas, Qt::LeftButton, {}, canvas->rect().center());
        QCOMPARE(worst->chosen(), 3);
    }

    void leavingTheStepClearsTheTrackFromTheSideView() {
        survey_->steps().openStep(2);
        const auto* side = window_->findChild<side_view::SideView*>();
        emit field<widgets::PlainTable>(*survey_, QStringLiteral("Worst crossings"))->rowChosen(3);
        QVERIFY(says(QStringLiteral("on the earlier pass")));
        QVERIFY(side->showsTrack());
        survey_->steps().openStep(3);
        QVERIFY(!side->showsTrack());
        QVERIFY(!says(QStringLiteral("on the earlier pass")));
    }

    void tomorrowLeadsFromConditionsToAPrintedSheet() {
        QTest::keyClick(window_.get(), Qt::Key_2, Qt::ControlModifier);
        QTRY_VERIFY(tomorrow_->isVisible());
        tomorrow_->steps().openStep(0);
        auto* level = field<widgets::AmountField>(*tomorrow_, QStringLiteral("Level"));
        QVERIFY(level != nullptr);
        typeInto(*level, QStringLiteral("0.35 m"));
        QCOMPARE(open().water()->plan.day.levelChange.inMetres(), 0.35);
        QTRY_VERIFY_WITH_TIMEOUT(
            open().planned() && open().isPlanCurrent() && !open().jobs().isBusy(), longEnough_ms);
        QVERIFY(open().planned()->marks.size() >= 5);
        for (const marks::Mark& mark : open().planned()->marks) {
            QVERIFY(mark.factors.size() >= 5);
            QVERIFY(mark.anchors.bow.rope.inMetres() > 0.0 &&
                    mark.anchors.stern->rope.inMetres() > 0.0);
            QVERIFY(!mark.spread.rods.empty());
        }
        tomorrow_->steps().openStep(3);
        window_->grab().save(QStringLiteral(MEREMARK_PICTURE_DIR "/tomorrow.png"));
        // A track looked at on the survey day gives way to the cut of the mark again.
        const auto* side = window_->findChild<side_view::SideView*>();
        QVERIFY(side->scene().mark);
        const int rank = side->scene().mark->rank;
        window_->showDay(0);
        survey_->steps().openStep(0);
        auto* dayTable = survey_->findChild<widgets::PlainTable*>();
        emit dayTable->rowChosen(1);
        QVERIFY(side->showsTrack());
        window_->showDay(1);
        QVERIFY(!side->showsTrack() && side->scene().mark);
        QCOMPARE(side->scene().mark->rank, rank);
        chart::ChartContent content = window_->findChild<chart::ChartCanvas*>()->content();
        const QString sheet = folder_.filePath(QStringLiteral("sheet.pdf"));
        const auto pages =
            paper::saveDaySheet(sheet.toStdString(), content, paper::SheetForm::withPictures);
        QVERIFY(pages && *pages >= 1);
        QVERIFY(QFileInfo(sheet).size() > 10000);
    }

    void draggingAMarkPinsItThere() {
        planTomorrow();
        const marks::Mark first = open().planned()->marks.front();
        const geo::WaterPoint there{first.place.x_m + 12.0, first.place.y_m};
        tomorrow_->hand().drop({first.rank, chart::LiePart::Kind::boat, 0}, there);
        QCOMPARE(open().water()->pinnedMarks.size(), std::size_t{1});
        QTRY_VERIFY_WITH_TIMEOUT(open().isPlanCurrent() && !open().jobs().isBusy(), longEnough_ms);
        const auto& marks = open().planned()->marks;
        QVERIFY(std::any_of(marks.begin(), marks.end(),
                            [](const marks::Mark& m) { return m.isPinned; }));
        open().undoStack().undo();
        QVERIFY(open().water()->pinnedMarks.empty());
    }

    void lookingBackTakesAFishIntoTheRates() {
        window_->showDay(2);
        const auto fishOf = [this] {
            base::Progress silent;
            return water::reviewLog(*open().water(), open().derived(), {}, silent)->overall.fish;
        };
        const int before = fishOf();
        back_->steps().openStep(2);
        window_->grab().save(QStringLiteral(MEREMARK_PICTURE_DIR "/looking-back-stays.png"));
        widgets::PlainTable* stays = nullptr;
        for (auto* each : back_->findChildren<widgets::PlainTable*>()) {
            stays = each->accessibleName() == QStringLiteral("Stays and fish") ? each : stays;
        }
        QVERIFY(stays != nullptr && stays->rowCount() > 1);
        // The first row is the heading of the last day.
        QTest::mouseClick(stays->viewport(), Qt::LeftButton, {},
                          stays->visualRect(stays->model()->index(1, 0)).center());
        QPushButton* add = button(*back_, QStringLiteral("Fish"));
        QVERIFY(add != nullptr && add->isEnabled());
        QTest::mouseClick(add, Qt::LeftButton);
        const QString time = stays->words(1, 0).left(5); // when the stay began
        for (const QString& name :
             {QStringLiteral("Time"), QStringLiteral("Species"), QStringLiteral("Weight")}) {
            for (auto* line : back_->findChildren<widgets::EntryLine*>()) {
                if (line->accessibleName() == name && line->isVisible()) {
                    QTest::keyClicks(line, name == QStringLiteral("Time") ? time : QString());
                    QTest::keyClick(line, Qt::Key_Return);
                    break;
                }
            }
        }
        QTRY_COMPARE_WITH_TIMEOUT(fishOf(), before + 1, 5000);
        back_->steps().openStep(3);
        QTRY_VERIFY_WITH_TIMEOUT(!open().jobs().isBusy(), longEnough_ms);
        window_->grab().save(QStringLiteral(MEREMARK_PICTURE_DIR "/looking-back.png"));
        open().undoStack().undo();
        QCOMPARE(fishOf(), before);
    }

    void everythingIsInTheFileWhenItIsOpenedAgain() {
        nameASection();
        const water::Water before = *open().water();
        open().finishKeeping();
        QVERIFY(open().open(walk()));
        for (const water::Part part : water::allParts) {
            const std::array one{part};
            QVERIFY2(water::copyOfParts(*open().water(), one) == water::copyOfParts(before, one),
                     std::to_string(static_cast<int>(part)).c_str());
        }
        QVERIFY(open().derived().drawn != nullptr); // kept, so that opening is instant
        QTRY_VERIFY_WITH_TIMEOUT(!open().jobs().isBusy(), longEnough_ms);
    }

    void badFilesAreToldAndCostNothing() {
        const water::Water before = *open().water();
        const QString empty = folder_.filePath(QStringLiteral("empty.nmea"));
        QFile(empty).open(QIODevice::WriteOnly);
        window_->showDay(0);
        survey_->takeFiles({empty});
        QTRY_VERIFY_WITH_TIMEOUT(window_->bottomLine().said().contains(QStringLiteral("empty")),
                                 5000);
        QVERIFY(*open().water() == before);
        window_->openWater(empty);
        QVERIFY(open().isOpen());
    }

    void factsOfOneWaterDoNotReachTheNext() {
        survey_->takeFiles({sample("survey-days.csv")});
        openNext();
        survey_->takeFiles({sample("survey-2026-09-05.nmea")});
        QTRY_COMPARE_WITH_TIMEOUT(open().water()->days.size(), std::size_t{1}, longEnough_ms);
        QVERIFY(!open().water()->days[0].gauge.isKnown());
        open().jobs().cancelAll();
        QTRY_VERIFY_WITH_TIMEOUT(!open().jobs().isBusy(), longEnough_ms);
    }

    void factsReachADayThatIsInAlready() {
        openNext();
        survey_->takeFiles({sample("survey-2026-09-05.nmea")});
        QTRY_COMPARE_WITH_TIMEOUT(open().water()->days.size(), std::size_t{1}, longEnough_ms);
        QVERIFY(!open().water()->days[0].gauge.isKnown());
        survey_->takeFiles({sample("survey-days.csv")});
        QTRY_VERIFY_WITH_TIMEOUT(open().water()->days[0].gauge.isKnown(), longEnough_ms);
        open().undoStack().undo();
        QVERIFY(!open().water()->days[0].gauge.isKnown());
    }

    void shorelineIsTracedByClicks() {
        window_->showDay(0);
        openNext();
        survey_->takeFiles({sample("survey-2026-09-05.nmea")});
        QTRY_COMPARE_WITH_TIMEOUT(open().water()->days.size(), std::size_t{1}, longEnough_ms);
        survey_->steps().openStep(1);
        QVERIFY(open().water()->shoreline.empty());
        QPushButton* trace = button(*survey_, QStringLiteral("Trace..."));
        QVERIFY(trace != nullptr && trace->isEnabled());
        QTest::mouseClick(trace, Qt::LeftButton);
        auto* canvas = window_->findChild<chart::ChartCanvas*>();
        for (const QPoint corner : {QPoint(100, 80), {600, 80}, {600, 400}, {100, 400}}) {
            QTest::mouseClick(canvas, Qt::LeftButton, {}, corner);
        }
        QTest::keyClick(canvas, Qt::Key_Return);
        QCOMPARE(open().water()->shoreline.size(), std::size_t{1});
        QCOMPARE(open().water()->shoreline[0].outer.size(), std::size_t{4});
        QVERIFY(canvas->tool() == chart::ToolKind::pan);
        open().undoStack().undo();
        QVERIFY(open().water()->shoreline.empty());
        open().jobs().cancelAll();
        QTRY_VERIFY_WITH_TIMEOUT(!open().jobs().isBusy(), longEnough_ms);
    }

private: // NOLINT(readability-redundant-access-specifiers): those before are slots
    open_water::OpenWater& open() { return window_->open(); }

    [[nodiscard]] QString next() const { return folder_.filePath(QStringLiteral("next.gpkg")); }
    [[nodiscard]] QString walk() const { return folder_.filePath(QStringLiteral("walk.gpkg")); }

    void openWindow() {
        window_ = std::make_unique<window::MainWindow>(folder_.filePath(QStringLiteral("unnamed")));
        window_->resize(1280, 800);
        window_->show();
        QVERIFY(QTest::qWaitForWindowExposed(window_.get()));
        survey_ = window_->findChild<days::survey_day::SurveyDay*>();
        tomorrow_ = window_->findChild<days::tomorrow::TomorrowDay*>();
        back_ = window_->findChild<days::looking_back::LookingBackDay*>();
        QVERIFY(survey_ != nullptr && tomorrow_ != nullptr && back_ != nullptr);
        window_->showDay(0);
    }

    void closeWindow() {
        QVERIFY(open().finishKeeping());
        window_.reset();
        QSettings().clear();
    }

    /// Waits until all that follows from the water is of now and nothing runs.
    void settle() {
        QTRY_VERIFY_WITH_TIMEOUT(open().isCurrent(water::Step::sections) && !open().jobs().isBusy(),
                                 longEnough_ms);
    }

    /// Another water, with nothing in it.
    void openNext() { QVERIFY(open().create(next(), QStringLiteral("next"))); }

    void planTomorrow() {
        window_->showDay(1);
        QTRY_VERIFY_WITH_TIMEOUT(
            open().planned() && open().isPlanCurrent() && !open().jobs().isBusy(), longEnough_ms);
    }

    void drawTheSample() {
        QVERIFY(open().create(walk(), QStringLiteral("walk")));
        survey_->takeFiles({sample("survey-days.csv"), sample("water.json"),
                            sample("shoreline.geojson"), sample("survey-2026-09-05.nmea"),
                            sample("survey-2026-09-12.gpx"), sample("survey-2026-09-19.csv"),
                            sample("weed-notes.csv"), sample("lead-line.csv"),
                            sample("house-rules.json"), sample("log.csv")});
        QTRY_VERIFY_WITH_TIMEOUT(!survey_->isTakingFiles(), longEnough_ms);
        settle();
        // The day without a gauge reading is offered an offset, and nothing is added before the
        // user agrees.
        QVERIFY(!open().water()->days[1].agreedOffset);
        survey_->steps().openStep(2);
        QPushButton* agree = button(*survey_, QStringLiteral("Agree"));
        QVERIFY(agree != nullptr);
        QTest::mouseClick(agree, Qt::LeftButton);
        settle();
    }

    /// Whether some visible label of the survey day holds these words.
    bool says(const QString& words) {
        const auto labels = survey_->findChildren<QLabel*>();
        return std::any_of(labels.begin(), labels.end(), [&](const QLabel* label) {
            return label->isVisible() && label->text().contains(words);
        });
    }

    /// Goes round the middle of the chart with the button held.
    void goRound(const QString& what) {
        QPushButton* begin = button(*survey_, what);
        QVERIFY(begin != nullptr && begin->isEnabled());
        QTest::mouseClick(begin, Qt::LeftButton);
        auto* canvas = window_->findChild<chart::ChartCanvas*>();
        const QPoint middle = canvas->rect().center();
        const QPoint from = middle + QPoint(-60, -60);
        QTest::mousePress(canvas, Qt::LeftButton, {}, from);
        for (const QPoint to : {QPoint(60, -60), {60, 60}, {-60, 60}}) {
            const QPointF at = middle + to;
            QMouseEvent move(QEvent::MouseMove, at, canvas->mapToGlobal(at), Qt::NoButton,
                             Qt::LeftButton, {});
            QCoreApplication::sendEvent(canvas, &move);
        }
        QTest::mouseRelease(canvas, Qt::LeftButton, {}, from);
    }

    /// Draws the brush across the middle of the side view, down through the water.
    static void brushAcross(side_view::SideView& side) {
        const QPointF from(0.4 * side.width(), 0.2 * side.height());
        const QPointF to(0.5 * side.width(), 0.9 * side.height());
        QTest::mousePress(&side, Qt::LeftButton, {}, from.toPoint());
        QMouseEvent move(QEvent::MouseMove, to, side.mapToGlobal(to), Qt::NoButton, Qt::LeftButton,
                         {});
        QCoreApplication::sendEvent(&side, &move);
        QTest::mouseRelease(&side, Qt::LeftButton, {}, to.toPoint());
    }

    void nameASection() {
        survey_->steps().openStep(6);
        widgets::PlainTable* table = nullptr;
        for (widgets::PlainTable* each : survey_->findChildren<widgets::PlainTable*>()) {
            table = each->isVisible() ? each : table;
        }
        QVERIFY(table != nullptr && table->rowCount() >= 10);
        emit table->typedOver(2, QStringLiteral("Long Bar"));
        QCOMPARE(open().water()->sectionNames.size(), std::size_t{1});
        settle();
        QCOMPARE(open().derived().sections->sections[2].name, std::string("Long Bar"));
        open().undoStack().undo();
        QVERIFY(open().water()->sectionNames.empty());
        open().undoStack().redo();
        QCOMPARE(open().water()->sectionNames.size(), std::size_t{1});
        settle();
    }

    QTemporaryDir folder_;
    QString drawn_ = folder_.filePath(QStringLiteral("drawn.gpkg"));
    std::unique_ptr<window::MainWindow> window_;
    days::survey_day::SurveyDay* survey_ = nullptr;
    days::tomorrow::TomorrowDay* tomorrow_ = nullptr;
    days::looking_back::LookingBackDay* back_ = nullptr;
};

int main(int argc, char** argv) {
    QApplication app(argc, argv);
    window::applyStyle(app);
    DeskWalk walk;
    return QTest::qExec(&walk, argc, argv);
}

#include "desk_walk_test.moc"
