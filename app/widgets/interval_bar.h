// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QColor>
#include <QWidget>

#include <vector>

namespace widgets {

/// One bar: a number with the range in which it may really lie.
struct Interval {
    QString name;
    double value = 0.0;
    double low = 0.0;
    double high = 0.0;
    QString words;       ///< At the right: "1.4".
    bool isKnown = true; ///< False draws no bar.
    friend bool operator==(const Interval&, const Interval&) = default;
};

/// Rows of names, bars on one common scale from zero, and numbers. A share without doubt has low
/// and high equal to its value and is drawn as a plain bar.
class IntervalBar : public QWidget {
    Q_OBJECT
public:
    explicit IntervalBar(const QColor& ink, QWidget* parent = nullptr);

    /// \param most the end of the scale; bars that reach farther are cut there.
    void setRows(std::vector<Interval> rows, double most);

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    std::vector<Interval> rows_;
    double most_ = 1.0;
    QColor ink_;
};

} // namespace widgets
