// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/days/chart_link.h"
#include "app/open_water/open_water.h"
#include "app/preferences/preferences.h"

#include <QMainWindow>

class QAction;
class QStackedWidget;

namespace chart {
class ChartCanvas;
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
class StartList;
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
    void wireWater();
    void countAsTheUser();
    void layWaterMenu();
    void layLayersMenu();
    void fillRecent(QMenu* recent);
    [[nodiscard]] bool mayLeave();
    [[nodiscard]] bool saveElsewhere();
    void nameWater();
    void takeMove(const QString& from);
    void showNotKept();
    void askNewWater();
    void askOpenWater();
    void askFolderToGive();
    void give(const QString& folder, const QString& withoutMarks);
    void askChartPage();
    void saveChartPage(const QString& path);
    void showKeys();
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
    days::ChartLink link_;
    TopLine* top_ = nullptr;
    BottomLine* bottom_ = nullptr;
    StartList* start_ = nullptr;
    chart::ChartCanvas* canvas_ = nullptr;
    side_view::SideView* side_ = nullptr;
    QStackedWidget* days_ = nullptr;
    days::survey_day::SurveyDay* survey_ = nullptr;
    days::tomorrow::TomorrowDay* tomorrow_ = nullptr;
    days::looking_back::LookingBackDay* back_ = nullptr;
    std::optional<int> cutMark_;        ///< The mark that the side view shows, and of which plan.
    std::optional<std::size_t> cutRod_; ///< Of its rods, along whose cast it leads.
    std::shared_ptr<const water::PlannedDay> cutPlan_;
};

} // namespace window
