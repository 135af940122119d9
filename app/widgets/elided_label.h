// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLabel>

namespace widgets {

/// One line of words that gives way where there is little room: cut with an ellipsis, and then
/// whole in the tooltip. text() stays whole.
class ElidedLabel : public QLabel {
    Q_OBJECT
public:
    explicit ElidedLabel(QWidget* parent = nullptr);

    /// Also into the tooltip, where it does not fit.
    void setWhole(const QString& words);
    [[nodiscard]] bool isCut() const;
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void tell();
};

} // namespace widgets
