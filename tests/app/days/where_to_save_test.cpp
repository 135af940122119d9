// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/where_to_save.h"

#include "core/store/water_store.h"
#include "tests/support/scratch_folder.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QFileDialog>
#include <QLineEdit>
#include <QSignalSpy>
#include <QTimer>

namespace {

using days::mayBeWrittenOver;

class WhereToSave : public testing::Test {
protected:
    void SetUp() override {
        QApplication::setAttribute(Qt::AA_DontUseNativeDialogs);
        ASSERT_TRUE(store::create((folder_.path() / "mere.gpkg").string()));
        std::filesystem::create_symlink("mere.gpkg", folder_.path() / "link.pdf");
        std::filesystem::create_directory(folder_.path() / "folder");
    }
    [[nodiscard]] QString at(const char* name) const {
        return QString::fromStdString((folder_.path() / name).string());
    }
    /// What is asked for, with this path typed into the dialog and its question answered with yes.
    QString asked(const QString& path) {
        QTimer typing;
        QObject::connect(&typing, &QTimer::timeout, [&] {
            if (auto* dialog = qobject_cast<QFileDialog*>(QApplication::activeModalWidget())) {
                typing.stop();
                dialog->setOption(QFileDialog::DontConfirmOverwrite);
                dialog->findChild<QLineEdit*>(QStringLiteral("fileNameEdit"))->setText(path);
                QMetaObject::invokeMethod(dialog, "accept");
            }
        });
        typing.start(0);
        QWidget parent;
        return days::askWhereToSave(parent, open_, QStringLiteral("Save"),
                                    QStringLiteral("sheet.pdf"), QStringLiteral("PDF (*.pdf)"));
    }

    const support::ScratchFolder folder_;
    open_water::OpenWater open_;
};

TEST_F(WhereToSave, IsNeverAWaterOrWhatIsNoFile) {
    for (const char* name : {"mere.gpkg", "link.pdf", "folder"}) {
        const auto may = mayBeWrittenOver(at(name));
        ASSERT_FALSE(may) << name;
        EXPECT_EQ(may.error().kind, base::ErrorKind::unwritableOutput);
        EXPECT_EQ(may.error().where, at(name).toStdString());
    }
    EXPECT_TRUE(mayBeWrittenOver(at("new.pdf")));
    EXPECT_TRUE(mayBeWrittenOver(
        QString::fromStdString(folder_.file("old.pdf", "%PDF-1.4 of last week").string())));
    std::filesystem::resize_file(folder_.path() / "mere.gpkg", 5000);
    EXPECT_FALSE(mayBeWrittenOver(at("mere.gpkg"))) << "somebody may still want to rescue it";
}

TEST_F(WhereToSave, IsAskedAndWhatMayNotBeIsTold) {
    QSignalSpy told(&open_, &open_water::OpenWater::failed);
    EXPECT_EQ(asked(at("new.pdf")), at("new.pdf"));
    EXPECT_EQ(told.count(), 0);
    EXPECT_EQ(asked(at("mere.gpkg")), QString());
    ASSERT_EQ(told.count(), 1);
    EXPECT_NE(told[0][0].value<base::Error>().what.find("would be lost"), std::string::npos);
}

} // namespace
