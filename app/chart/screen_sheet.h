// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/chart_content.h"
#include "app/chart/view_frame.h"

#include <QImage>
#include <QObject>
#include <QPainter>
#include <QPixmap>
#include <QThreadPool>

#include <optional>

namespace chart {

/// The layers of the chart as last painted for the screen. They are painted on a thread of their
/// own: a large water takes a while, and the window answers meanwhile. Of what is asked for while
/// one is being painted only the last is painted after it.
class ScreenSheet : public QObject {
    Q_OBJECT
public:
    explicit ScreenSheet(QObject* parent = nullptr);
    ~ScreenSheet() override;
    ScreenSheet(const ScreenSheet&) = delete;
    ScreenSheet& operator=(const ScreenSheet&) = delete;
    ScreenSheet(ScreenSheet&&) = delete;
    ScreenSheet& operator=(ScreenSheet&&) = delete;

    /// \param pixelRatio device pixels to a pixel of the view.
    void ask(ChartContent content, const ViewFrame& view, double pixelRatio);
    /// True where the last that was asked for is of this view.
    [[nodiscard]] bool isAskedFor(const ViewFrame& view) const { return asked_ == view; }
    /// Waits until what was asked for has been painted.
    void finish();
    /// Forgets what was painted: it is of another water.
    void clear();

    [[nodiscard]] bool isEmpty() const { return sheet_.isNull(); }
    /// Draws the sheet, moved and stretched where it was painted in another view.
    void draw(QPainter& painter, const ViewFrame& view, const QColor& paper) const;

signals:
    /// There is another sheet to be drawn.
    void painted();

private:
    struct Order {
        ChartContent content;
        ViewFrame view;
        double pixelRatio = 1.0;
        int water = 0;
    };
    static QImage imageOf(const Order& order);
    void start(Order order);
    void take(const QImage& image, const ViewFrame& view, int water);

    QThreadPool pool_;
    bool isPainting_ = false;
    std::optional<Order> next_;
    ViewFrame asked_;
    QPixmap sheet_;
    ViewFrame view_;
    int waters_ = 0; ///< Counts them: a sheet of one is never shown as another's.
};

} // namespace chart
