// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/chart_content.h"
#include "app/chart/furniture.h"
#include "app/chart/key_pointer.h"
#include "app/chart/lie_part.h"
#include "app/chart/screen_sheet.h"
#include "app/chart/sounding_pick.h"
#include "app/chart/tools/tool.h"
#include "app/chart/view_frame.h"

#include <QTimer>
#include <QWidget>

#include <memory>
#include <optional>

namespace chart {

/// The chart on the screen. The paper is moved by dragging, or by the arrow keys; enlarged by the
/// wheel, a pinch, + and -, or a double click, about the pointer; 0 shows the whole water. With a
/// tool in the hand the arrows move a pointer of their own. It shows what it is given and says what
/// was done to it; it changes nothing itself.
class ChartCanvas : public QWidget {
    Q_OBJECT
public:
    explicit ChartCanvas(QWidget* parent = nullptr);
    ~ChartCanvas() override;

    /// Shows new content. The view stays, unless another water came.
    void setContent(ChartContent content);
    [[nodiscard]] const ChartContent& content() const { return content_; }
    [[nodiscard]] const ViewFrame& viewFrame() const { return view_; }
    void setViewFrame(const ViewFrame& view);
    void showWholeWater();
    /// Brings the place into the middle, enlarged to `least_pixelsPerMetre` where it is smaller.
    void showPlace(geo::WaterPoint place, double least_pixelsPerMetre = 0.0);

    [[nodiscard]] ToolKind tool() const { return toolKind_; }
    void setTool(ToolKind kind);
    /// Waits until the layers are painted as they are now.
    void finishPainting();
    /// All of it, with a margin, as large as it goes.
    void showBox(const geo::Box& box);
    /// What is pointed at elsewhere (in the side view): a small cross.
    void setPointed(std::optional<geo::WaterPoint> place);
    /// What was chosen to be looked at, a sounding or a crossing: a ring round it.
    void setChosen(std::optional<geo::WaterPoint> place);
    /// How a mark would lie with what the hand holds where it is; nothing: as it is planned.
    void setTried(std::optional<TriedLie> tried);
    /// The line of the cut that the side view shows.
    void setCut(std::optional<LineMade> cut);

    [[nodiscard]] QSize sizeHint() const override { return {900, 620}; }
    [[nodiscard]] QSize minimumSizeHint() const override { return {260, 200}; }

signals:
    void pointedAt(std::optional<geo::WaterPoint> place); ///< Nothing when the pointer leaves.
    void clicked(geo::WaterPoint place, Qt::KeyboardModifiers keys);
    void markClicked(int rank);
    void lieHeld(const chart::LiePart& part, geo::WaterPoint at); ///< And moved, not yet let go.
    void lieDropped(const chart::LiePart& part, geo::WaterPoint to);
    void rodClicked(std::size_t rod); ///< Of the chosen mark.
    void lieLetGo();                  ///< By Escape: it stays where it was.
    void soundingClicked(chart::SoundingPick sounding);
    void crossingClicked(std::size_t crossing); ///< Position among all.
    void sectionClicked(int section);
    void zoneClicked(std::optional<int> zone); ///< Nothing: a click beside all zones.
    void stayClicked(logbook::StayId stay);
    void made(const chart::Made& made); ///< By the tool in the hand.
    void viewChanged();
    /// A menu of what can be done there, at this point of the screen; by the right button, or its
    /// key: then at the chosen mark, or in the middle.
    void menuAsked(geo::WaterPoint place, QPoint at);
    void windHeld(units::Bearing from); ///< The arrow on the chart, and turned, not yet let go.
    void windDropped(units::Bearing from);
    void windLetGo(); ///< By Escape: it blows as before.

protected:
    bool event(QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void leaveEvent(QEvent* event) override;
    void contextMenuEvent(QContextMenuEvent* event) override;

private:
    /// What the held button is doing.
    struct Grip {
        QPointF from;                  ///< Where it was pressed.
        QPointF last;                  ///< Where the pointer was last.
        std::optional<LiePart> part;   ///< Of a mark, taken hold of.
        std::optional<WindArrow> wind; ///< Taken hold of.
        bool isDragging = false;       ///< Moved far enough not to be a click.
        bool isSecondClick = false;    ///< Released without a click of its own.
    };

    void changeView(const ViewFrame& view);
    void askForSheet();
    void drawSheet(QPainter& painter);
    void drawOverlay(QPainter& painter);
    void drawCut(QPainter& painter);
    /// The wind's arrow where the pointer is on it.
    [[nodiscard]] std::optional<WindArrow> windUnder(QPointF pixel) const;
    [[nodiscard]] units::Bearing heldWind() const;
    void dragGrip(QPointF pixel);
    void dropGrip(const Grip& grip, QPointF pixel);
    void hover(QPointF pixel);
    [[nodiscard]] bool letGripGo();
    void click(QPointF pixel, Qt::KeyboardModifiers keys);
    void tell(const std::optional<Made>& made);
    /// Whether the key was for the tool in the hand: arrows point, Space presses and lets go.
    [[nodiscard]] bool pointByKey(const QKeyEvent& event);
    void moveKeyPointer(QPointF step);
    void pressByKey();

    ChartContent content_;
    ViewFrame view_;
    bool hasOwnView_ = false; ///< False: keeps showing the whole water as the window changes.
    ToolKind toolKind_ = ToolKind::pan;
    std::unique_ptr<Tool> tool_;
    std::optional<geo::WaterPoint> pointed_;
    std::optional<geo::WaterPoint> chosen_;
    std::optional<LineMade> cut_;
    std::optional<TriedLie> tried_;
    std::optional<Grip> grip_;
    std::optional<KeyPointer> keyPointer_; ///< Absent until an arrow is pressed.
    ScreenSheet sheet_;
    bool isSheetStale_ = true;
    QTimer settle_; ///< Runs while the paper is moving: the old sheet is moved along until then.
};

} // namespace chart
