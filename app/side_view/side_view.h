// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/sounding_pick.h"
#include "app/side_view/side_scene.h"
#include "app/side_view/track_profile.h"

#include <QPixmap>
#include <QWidget>

#include <optional>
#include <variant>

namespace side_view {

/// The cut through the water under what is selected: a mark's ropes, a line drawn on the chart, or
/// the track of a survey day. Pointing in it is told to the chart, and the other way round.
class SideView : public QWidget {
    Q_OBJECT
public:
    explicit SideView(QWidget* parent = nullptr);

    /// New content; what is cut stays.
    void setContent(chart::ChartContent content);
    void showMark(int rank);
    /// How a mark would lie with what the hand on the chart holds: where that mark is shown, the
    /// cut follows the hand. Nothing: as it is planned.
    void setTried(std::optional<marks::Mark> tried);
    void showCut(geo::WaterPoint from, geo::WaterPoint to);
    void showTrack(int day); ///< Position of the survey day.
    /// Marks one sounding on the track of its day. \param isToBeShown brings the stretch of track
    /// round it before the eye. Nothing unmarks.
    void setChosen(std::optional<chart::SoundingPick> sounding, bool isToBeShown);
    void showNothing();
    /// Puts a brush into the hand: it is drawn over soundings of a track with the button held, and
    /// goes on to the next stroke until it is taken away again (nothing).
    void setBrush(std::optional<BrushAct> act);
    /// What the chart points at.
    void setPointed(std::optional<geo::WaterPoint> place);

    [[nodiscard]] const SideScene& scene() const { return scene_; }
    [[nodiscard]] const ProfileScene& profile() const { return profile_; }
    [[nodiscard]] bool showsTrack() const { return std::holds_alternative<DayTrack>(shown_); }
    [[nodiscard]] QSize sizeHint() const override { return {900, 190}; }
    [[nodiscard]] QSize minimumSizeHint() const override { return {260, 110}; }

signals:
    void pointedAt(std::optional<geo::WaterPoint> place); ///< Nothing when the pointer leaves.
    /// The path that is shown now; empty where none is.
    void cutChanged(const geo::Path& path);
    /// A sounding of the track was clicked, to be looked at.
    void soundingClicked(chart::SoundingPick sounding);
    /// A stroke of the brush is done; it met these, ascending, of the survey day at `day`.
    void soundingsBrushed(int day, const std::vector<std::size_t>& soundings);

protected:
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void leaveEvent(QEvent* event) override;

private:
    struct MarkCut {
        int rank = 0;
    };
    struct LineCut {
        geo::Path path;
    };
    struct DayTrack {
        int day = 0;
    };
    void renew();
    [[nodiscard]] SideScene sceneOfShown(int rank) const;
    void renewTrack(int day);
    void showCursor();
    void endStroke(int day);
    void bringIntoSight(double along_m, bool isToBeShown);
    [[nodiscard]] double wholeTrack_m() const;
    [[nodiscard]] QRectF page() const { return {rect()}; }

    /// What stays while the pointer moves, painted once.
    void paintSheet();
    void drawWords(QPainter& painter);

    chart::ChartContent content_;
    std::optional<marks::Mark> tried_;
    /// What the sheet shows; another one needs another sheet.
    struct SheetOf {
        int scene = 0;
        double from_m = 0.0;
        double to_m = 0.0;
        QSize size;
        friend bool operator==(const SheetOf&, const SheetOf&) = default;
    };
    QPixmap sheet_;
    SheetOf sheetOf_;
    int scenes_ = 0; ///< Counts them.
    std::variant<std::monostate, MarkCut, LineCut, DayTrack> shown_;
    SideScene scene_;
    ProfileScene profile_;
};

} // namespace side_view
