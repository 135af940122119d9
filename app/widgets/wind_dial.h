// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

namespace widgets {

/// A compass rose whose arrow is dragged to where the wind comes from; Escape takes a drag back.
/// Arrow keys turn it by five degrees.
class WindDial : public QWidget {
    Q_OBJECT
public:
    explicit WindDial(QWidget* parent = nullptr);

    /// Degrees true that the wind comes from; leaves the arrow alone while it is dragged.
    void setFrom(double degrees);
    /// Nobody knows where the wind comes from: there is no arrow until it is turned.
    void setUnknown();
    [[nodiscard]] double from() const { return from_deg_; }
    [[nodiscard]] bool isKnown() const { return isKnown_; }

    [[nodiscard]] QSize sizeHint() const override { return {112, 112}; }
    [[nodiscard]] QSize minimumSizeHint() const override { return {96, 96}; }

signals:
    /// The arrow turns under the hand.
    void turning(double degrees);
    /// It was let go.
    void turned(double degrees);

protected:
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    void turnTo(QPointF place);
    double from_deg_ = 0.0; ///< Nought while it is not known.
    bool isKnown_ = false;
    bool isDragged_ = false;
    double before_deg_ = 0.0; ///< As it was when it was taken hold of.
    bool wasKnown_ = false;
};

} // namespace widgets
