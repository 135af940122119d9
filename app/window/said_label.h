// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLabel>

namespace window {

/// A sentence that can be read whole: in one line, in two where it is long, and where two are not
/// enough, a click opens all of it.
class SaidLabel : public QLabel {
    Q_OBJECT
public:
    explicit SaidLabel(QWidget* parent = nullptr);

    void say(const QString& sentence);
    [[nodiscard]] const QString& said() const { return whole_; }
    /// Whether all of it stands there.
    [[nodiscard]] bool isWhole() const { return isWhole_; }

protected:
    void resizeEvent(QResizeEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;

private:
    void fit();
    void openWhole();

    QString whole_;
    bool isWhole_ = true;
};

} // namespace window
