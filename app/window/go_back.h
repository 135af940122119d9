// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/inks.h"
#include "app/jobs/job_runner.h"
#include "core/store/copies.h"

#include <QDialog>
#include <QListWidget>

#include <optional>
#include <vector>

namespace window {

/// The copies of a water as small pictures, each with when it was taken and how it differs from
/// what the water holds now; one can be chosen to go back to. Of a water that is damaged, what can
/// be read may be asked for instead.
class GoBack : public QDialog {
    Q_OBJECT
public:
    /// \param why what is wrong with the water as it is; empty where nothing is.
    GoBack(const store::Copies& copies, const QString& water, const QString& why, chart::Inks inks,
           QWidget* parent);

    /// The copy that was chosen, once the dialog is accepted.
    [[nodiscard]] std::optional<store::Copy> chosen() const;
    /// True where what can be read of the damaged file is wanted in a new one instead.
    [[nodiscard]] bool wantsRescue() const { return wantsRescue_; }
    /// Waits until all pictures are there.
    void finishPictures() { jobs_.finishAll(); }

private:
    /// What is shown of one copy, made beside the window.
    struct Card {
        QImage picture; ///< Null where it cannot be drawn.
        QString words;
    };
    [[nodiscard]] static Card cardOf(const store::Copy& copy,
                                     const std::optional<store::CopyCounts>& now, chart::Inks inks,
                                     base::Progress& progress);
    void startCard(std::size_t at, const QString& water);

    std::vector<store::Copy> copies_;
    chart::Inks inks_;
    bool wantsRescue_ = false;
    QListWidget* list_ = nullptr;
    jobs::JobRunner jobs_;
};

} // namespace window
