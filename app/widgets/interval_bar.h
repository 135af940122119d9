// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPalette>
#include <QWidget>

#include <vector>

namespace widgets {

/// One bar: a number with the range in which it may really lie.
struct Interval {
    QString name;
    double value = 0.0;
    double low = 0.0;
    double high = 0.0;
    QString words;         ///< At the right: "1.4".
    bool isKnown = true;   ///< False draws no bar.
    QString sentence = {}; ///< What is behind it, below; empty: nothing.
    friend bool operator==(const Interval&, const Interval&) = default;
};

/// Rows of names, bars on one common scale from zero, and numbers. A share without doubt has low
/// and high equal to its value and is drawn as a plain bar.
class IntervalBar : public QWidget {
    Q_OBJECT
public:
    /// \param ink the role of the palette that the bars are drawn in.
    explicit IntervalBar(QPalette::ColorRole ink, QWidget* parent = nullptr);

    /// \param most the end of the scale; bars that reach farther are cut there.
    void setRows(std::vector<Interval> rows, double most);

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;
    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] int heightForWidth(int width) const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    [[nodiscard]] QFont smallFont() const;
    [[nodiscard]] int rowHeight() const;
    /// Of the sentence below a bar; 0 where there is none.
    [[nodiscard]] int sentenceHeight(const Interval& row, int width) const;
    void paintRow(QPainter& painter, const Interval& row, double top, double right) const;

    std::vector<Interval> rows_;
    double most_ = 1.0;
    QPalette::ColorRole ink_;
};

} // namespace widgets
