// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/days/chart_link.h"
#include "app/open_water/copy_taker.h"
#include "app/open_water/open_water.h"
#include "app/preferences/preferences.h"
#include "core/store/rescue.h"

#include <QMainWindow>
#include <QPointer>

#include <array>
#include <functional>
#include <utility>
#include <vector>

class QAction;
class QMenu;
class QSplitter;
class QStackedWidget;

namespace chart {
class ChartCanvas;
}
namespace days {
class StepPanel;
}
namespace days::survey_day {
class SurveyDay;
}
namespace days::tomorrow {
class TomorrowDay;
}
namespace days::looking_back {
class LookingBackDay;
}
namespace side_view {
class SideView;
}

namespace window {

class BottomLine;
class GuideWindow;
class StartPage;
class TopLine;

/// The one window: chart and side view for all three days, the steps of the day at the right.
class MainWindow : public QMainWindow {
    Q_OBJECT
public:
    /// \param unnamedFolder where waters live that have no name.
    explicit MainWindow(const QString& unnamedFolder = usualUnnamedFolder());
    ~MainWindow() override;
    /// Under the user's data.
    [[nodiscard]] static QString usualUnnamedFolder();

    /// Opens a water file in the background; says so in the bottom line where it cannot.
    void openWater(const QString& path);
    void showDay(int day);
    [[nodiscard]] open_water::OpenWater& open() { return open_; }
    [[nodiscard]] BottomLine& bottomLine() { return *bottom_; }

protected:
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dropEvent(QDropEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void closeEvent(QCloseEvent* event) override;

private:
    void layOut();
    void layDays();
    void wireChart();
    void wireHand();
    void showChartMenu(geo::WaterPoint place, QPoint at);
    void addMarkActs(QMenu& menu, int rank);
    [[nodiscard]] std::optional<geo::Box> boxOfSection(int number) const;
    [[nodiscard]] std::optional<geo::Box> boxOfMark(int rank) const;
    void zoomToSection();
    void zoomToMark();
    void measure();
    void wireWater();
    void countAsTheUser();
    void layWaterMenu();
    void layLayersMenu();
    void layStrengths(QMenu* menu);
    [[nodiscard]] static std::vector<std::pair<chart::LayerKind, QString>> layerNames();
    void layViewMenu();
    void layLanguages(QMenu* menu);
    /// An act of a menu that its key reaches too.
    QAction* addTo(QMenu* menu, const QString& text, const QString& key,
                   const std::function<void()>& act);
    void takeLook();
    [[nodiscard]] std::array<days::StepPanel*, 3> panels();
    /// As it was left the last time.
    void comeBack();
    void keepHowItIsLeft();
    void fillRecent(QMenu* recent);
    [[nodiscard]] bool mayLeave();
    [[nodiscard]] bool saveElsewhere();
    void nameWater();
    void takeMove(const QString& from);
    void showNotKept();
    void askNewWater();
    void askOpenWater();
    void goBack(const QString& path, const QString& why);
    void offerCopies(const base::Error& error);
    /// Asks for a new file and lays into it what can be read of this damaged one.
    void rescue(const QString& path);
    void tellLost(const store::Rescue& rescued);
    void askFolderToGive();
    void give(const QString& folder, const QString& withoutMarks);
    void layScales(QMenu* menu);
    /// \param denominator of the scale; 0: as large as it goes on A4.
    void askChartFile(double denominator);
    void saveChart(const QString& path, double denominator);
    /// Whether there is a chart to be given away; says so where there is none.
    bool hasChart();
    /// Acts once what the chart shows is of now, the drawing and the marks on it, or says why it
    /// cannot be.
    void withChartOfNow(const std::function<void()>& act);
    void previewChart();
    void copyChart();
    /// The guide, at what it says of the step that is open.
    void showGuide();
    void showKeys();
    [[nodiscard]] GuideWindow& guide();
    void showAbout();
    void showName();
    void sayOpened();
    void takeContent();
    void showCutOfMark();
    void tellDrawn();
    void tellPlanned();
    void tellAsking();
    [[nodiscard]] QString asked() const; ///< What the chart is being asked; empty for nothing.

    preferences::Preferences preferences_;
    open_water::OpenWater open_;
    open_water::CopyTaker copyTaker_;
    days::ChartLink link_;
    TopLine* top_ = nullptr;
    BottomLine* bottom_ = nullptr;
    StartPage* start_ = nullptr;
    GuideWindow* guide_ = nullptr; ///< Once it has been asked for.
    chart::ChartCanvas* canvas_ = nullptr;
    side_view::SideView* side_ = nullptr;
    QSplitter* across_ = nullptr; ///< Chart and cut beside the steps.
    QSplitter* down_ = nullptr;   ///< Chart above the cut.
    QStackedWidget* days_ = nullptr;
    days::survey_day::SurveyDay* survey_ = nullptr;
    days::tomorrow::TomorrowDay* tomorrow_ = nullptr;
    days::looking_back::LookingBackDay* back_ = nullptr;
    std::optional<int> cutMark_;        ///< The mark that the side view shows, and of which plan.
    std::optional<std::size_t> cutRod_; ///< Of its rods, along whose cast it leads.
    std::shared_ptr<const water::PlannedDay> cutPlan_;
    QPointer<QWidget> beforeAsking_; ///< Where the keys went before the chart was asked.
};

} // namespace window
