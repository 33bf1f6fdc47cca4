// What each verb gives back: exit status, standard output, standard error, files.
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <unistd.h>

#include <nlohmann/json.hpp>

#include "verbs/program.hpp"

namespace tinworm::verbs {
namespace {

using testing::HasSubstr;
using testing::StartsWith;

TEST(Weigh, BeginsWithTheVerdictAndEndsWithTheCautionAndHowItWasMade) {
  const Workshop workshop;
  const std::string weigh = "weigh good.yaml --panels panels";
  const Ended ended = workshop.run(weigh);
  EXPECT_EQ(ended.status, 0);
  EXPECT_THAT(ended.results, StartsWith("Verdict: to be mended.\n"));
  EXPECT_THAT(ended.results,
              testing::ContainsRegex(
                  "What wasn't seen is not known.\nRecord: .tinworm " TINWORM_TEST_VERSION
                  ": weigh --as=text --units=mm; body small-body 2; plan [0-9a-f]+; survey "
                  "good.yaml [0-9a-f]+]\n$"));
  EXPECT_EQ(ended.messages, "");
  // What is shown on a terminal is no file that could be held against a survey.
  const Ended shown = workshop.run(weigh + "' /dev/null", "true", "script -qec '");
  EXPECT_THAT(shown.results, HasSubstr("What wasn't seen is not known."));
  EXPECT_THAT(shown.results, testing::Not(HasSubstr("Record: ")));
}

// Folders are the user's own: their names may be those of people and places.
TEST(Outputs, NameASurveyByItsFileAlone) {
  const Workshop workshop;
  const auto run = [&](const std::string& arguments) {
    const Ended ended = workshop.run(arguments + " --panels panels",
                                     "mkdir -p Zzyx/a && cp good.yaml Zzyx/a/car.yaml && "
                                     "sed 's/2025-04-12/2021-04-12/' good.yaml > Zzyx/old.yaml");
    EXPECT_EQ(ended.status, 0) << arguments << ": " << ended.messages;
    return ended.results;
  };
  for (const std::string arguments :
       {"weigh Zzyx/a/car.yaml", "weigh Zzyx/a/car.yaml --format json",
        "weigh Zzyx/a/car.yaml --format csv", "weigh Zzyx/a/car.yaml Zzyx/old.yaml",
        "work Zzyx/a/car.yaml", "work Zzyx/a/car.yaml --format json",
        "work Zzyx/a/car.yaml --format csv", "work Zzyx/a Zzyx/old.yaml",
        "compare Zzyx/a/car.yaml Zzyx/old.yaml",
        "compare Zzyx/a/car.yaml Zzyx/old.yaml --format json",
        "compare Zzyx/a/car.yaml Zzyx/old.yaml --format csv", "check Zzyx/a/car.yaml --format json",
        "map Zzyx/a/car.yaml -o - --as svg"}) {
    const std::string results = run(arguments);
    EXPECT_THAT(results, testing::Not(HasSubstr("Zzyx"))) << arguments;
    EXPECT_THAT(results, HasSubstr("car.yaml")) << arguments;
  }
  for (const std::string arguments :
       {"map Zzyx/a/car.yaml", "report Zzyx/a/car.yaml", "work Zzyx/a/car.yaml",
        "compare Zzyx/a/car.yaml Zzyx/old.yaml", "listing Zzyx/a/car.yaml"}) {
    run(arguments + " -o out.pdf");
    workshop.run("--version",
                 "(pdftotext out.pdf - && qpdf --qdf --object-streams=disable out.pdf -) > read");
    EXPECT_THAT(workshop.text("read"), HasSubstr("Wherry 1200")) << arguments;
    EXPECT_THAT(workshop.text("read"), testing::Not(HasSubstr("Zzyx"))) << arguments;
  }
}

// Two surveys may have one name in two folders.
TEST(Outputs, OfSurveysOfOneNameAreCompared) {
  const Workshop workshop;
  const Ended ended = workshop.run("compare then/car.yaml now/car.yaml --panels panels",
                                   "mkdir then now && cp good.yaml now/car.yaml && "
                                   "sed 's/2025-04-12/2021-04-12/' good.yaml > then/car.yaml");
  EXPECT_EQ(ended.status, 0) << ended.messages;
  const Ended twice = workshop.run("compare now/car.yaml now/../now/car.yaml --panels panels");
  EXPECT_EQ(twice.status, 2);
  EXPECT_THAT(twice.messages,
              HasSubstr("now/car.yaml and now/../now/car.yaml are the same survey"));
}

TEST(Weigh, GivesOneJsonDocumentOrOneLineEach) {
  const Workshop workshop;
  const std::string one = workshop.run("weigh good.yaml --panels panels --format json").results;
  const auto json = nlohmann::json::parse(one);
  EXPECT_EQ(json["file"], "good.yaml");
  EXPECT_EQ(json["sha256"].get<std::string>().size(), 64u);
  EXPECT_EQ(json["zones"].size(), 3u);
  EXPECT_EQ(workshop.run("weigh good.yaml --panels panels -o - --as json").results, one);

  workshop.put("other.yaml", workshop.text("good.yaml"));
  const std::string two =
      workshop.run("weigh good.yaml other.yaml --panels panels --format json").results;
  EXPECT_EQ(std::count(two.begin(), two.end(), '\n'), 2);
  EXPECT_EQ(nlohmann::json::parse(two.substr(0, two.find('\n'))), json);
}

TEST(Weigh, KeepsTheOrderOfTheFilesWhateverTheThreads) {
  const Workshop workshop;
  std::string files;
  for (char name = 'a'; name <= 'z'; ++name) {
    workshop.put(std::string(1, name) + ".yaml", workshop.text("good.yaml"));
    files = std::string(1, name) + ".yaml " + files;
  }
  const std::string weigh = "weigh " + files + " --panels panels --format csv --jobs ";
  const Ended one = workshop.run(weigh + "1");
  EXPECT_EQ(one.status, 0);
  EXPECT_EQ(workshop.run(weigh + "7").results, one.results);
  EXPECT_LT(one.results.find("z.yaml"), one.results.find("a.yaml"));
}

TEST(Weigh, NamesBadFilesAtTheEndAndWeighsTheOthers) {
  const Workshop workshop;
  const Ended ended = workshop.run("weigh bad.yaml good.yaml --panels panels --jobs 1");
  EXPECT_EQ(ended.status, 1);
  EXPECT_THAT(ended.results, StartsWith("survey     date        verdict  "));
  EXPECT_THAT(ended.results, HasSubstr("\ngood.yaml  2025-04-12  mend  "));
  EXPECT_EQ(ended.messages, bad_survey_problems +
                                "tinworm: 1 of 2 surveys have mistakes or could not be read:\n"
                                "  bad.yaml\n");
}

TEST(Weigh, TakesAFolder) {
  const Workshop workshop;
  const Ended ended = workshop.run("weigh . --panels panels --format json");
  EXPECT_EQ(ended.status, 1) << "bad.yaml is in it";
  EXPECT_EQ(std::count(ended.results.begin(), ended.results.end(), '\n'), 1);
  const Ended none = workshop.run("weigh panels/none --panels panels", "mkdir -p panels/none");
  EXPECT_EQ(none.status, 3);
  EXPECT_EQ(none.messages,
            "tinworm: panels/none: a folder without surveys (surveys end in .yaml)\n");
}

TEST(Weigh, WritesFilesAndSaysSo) {
  const Workshop workshop;
  const Ended ended = workshop.run("weigh good.yaml --panels panels -o out.csv");
  EXPECT_EQ(ended.status, 0);
  EXPECT_EQ(ended.results, "");
  EXPECT_EQ(ended.messages, "wrote out.csv\n");
  EXPECT_EQ(workshop.text("out.csv"),
            workshop.run("weigh good.yaml --panels panels --format csv").results);
  EXPECT_EQ(workshop.run("weigh good.yaml --panels panels -o out.csv --quiet").messages, "");
}

TEST(Weigh, ExplainsAZone) {
  const Ended ended = Workshop().run("weigh good.yaml --panels panels --explain 51");
  EXPECT_EQ(ended.status, 0);
  EXPECT_THAT(ended.results, StartsWith("51 outer sill, left\n"));
  EXPECT_THAT(ended.results, HasSubstr("readings: 3, mean 0.80 mm, least 0.80 mm"));
}

TEST(Files, ThatCannotBeReadGiveThree) {
  const Workshop workshop;
  const Ended ended = workshop.run("weigh god.yaml --panels panels");
  EXPECT_EQ(ended.status, 3);
  EXPECT_EQ(ended.messages, "tinworm: god.yaml: no such file (did you mean \"good.yaml\"?)\n");
  const Ended panels = workshop.run("weigh good.yaml --panels nowhere");
  EXPECT_EQ(panels.status, 3);
  EXPECT_EQ(panels.messages, "tinworm: nowhere: no such folder (look at the path)\n");
}

TEST(Files, ThatCannotBeWrittenGiveThreeAndStayWhole) {
  const Workshop workshop;
  workshop.put("old.json", "old and whole");
  // A limit on the size of files stands for a disk that fills up half-way.
  const Ended full = workshop.run("weigh good.yaml --panels panels -o old.json", "ulimit -f 1");
  EXPECT_EQ(full.status, 3);
  EXPECT_EQ(full.messages, "tinworm: old.json: larger than the system lets a file become\n");
  EXPECT_EQ(workshop.text("old.json"), "old and whole");
  EXPECT_EQ(workshop.run("weigh good.yaml --panels panels -o none/out.json").messages,
            "tinworm: none/out.json: its folder does not exist (make the folder first)\n");
  const Ended device = workshop.run("weigh good.yaml --panels panels --as json -o /dev/full");
  EXPECT_EQ(device.status, 3);
  EXPECT_EQ(device.messages,
            "tinworm: /dev/full: the disk is full (make room, or write elsewhere)\n");
}

// Root without the capability to override permissions is as everyone else.
TEST(Files, InAReadOnlyFolderStayWhole) {
  const Workshop workshop;
  const std::string through =
      ::geteuid() == 0 ? "setpriv --bounding-set=-dac_override,-dac_read_search" : "";
  const Ended ended =
      workshop.run("weigh good.yaml --panels panels -o closed/old.json",
                   "mkdir closed && echo old > closed/old.json && chmod 555 closed", through);
  EXPECT_EQ(ended.status, 3);
  EXPECT_EQ(ended.messages,
            "tinworm: closed/old.json: no file may be made in its folder, closed (write to another "
            "folder, or let yourself write to this one)\n");
  EXPECT_EQ(workshop.text("closed/old.json"), "old\n");
  workshop.run("--version", "chmod 755 closed");  // so that the folder can be cleared away
}

TEST(Files, ThatWereMadeReadOnlyAreNotReplaced) {
  const Workshop workshop;
  const std::string through =
      ::geteuid() == 0 ? "setpriv --bounding-set=-dac_override,-dac_read_search" : "";
  const Ended ended = workshop.run("weigh good.yaml --panels panels -o kept.json",
                                   "echo old > kept.json && chmod 444 kept.json", through);
  EXPECT_EQ(ended.status, 3);
  EXPECT_EQ(ended.messages,
            "tinworm: kept.json: permission denied (see who may use it, or take another)\n");
  EXPECT_EQ(workshop.text("kept.json"), "old\n");
}

TEST(Streams, TellWhenStandardOutputCannotBeWritten) {
  const Workshop workshop;
  const Ended full = workshop.run("weigh good.yaml --panels panels >/dev/full");
  EXPECT_EQ(full.status, 3);
  EXPECT_EQ(full.messages,
            "tinworm: standard output: the disk is full (make room, or write elsewhere)\n");
}

TEST(Streams, ATelltaleThatIsGoneChangesNothing) {
  const Workshop workshop;
  for (const std::string to : {"2>&-", "2>/dev/full"}) {
    EXPECT_EQ(workshop.run("map good.yaml --panels panels -o out.svg " + to).status, 0) << to;
    EXPECT_TRUE(workshop.has("out.svg"));
    EXPECT_EQ(workshop.run("frob " + to).status, 2) << to;
    EXPECT_EQ(workshop.run("check none.yaml " + to).status, 3) << to;
  }
}

TEST(Files, APipeInAFolderIsNotWaitedFor) {
  const Workshop workshop;
  const Ended ended = workshop.run("check pipes --panels panels",
                                   "mkdir pipes && mkfifo pipes/a.yaml && cp good.yaml pipes");
  EXPECT_EQ(ended.status, 0) << ended.messages;
}

TEST(Bodies, ListsPlansAndTheZonesOfOne) {
  const Workshop workshop;
  const Ended all = workshop.run("bodies --panels panels");
  EXPECT_EQ(all.status, 0);
  EXPECT_THAT(all.results, HasSubstr("small-body"));
  const Ended one = workshop.run("bodies small-body --panels panels");
  EXPECT_EQ(one.status, 0);
  EXPECT_EQ(one.results,
            "small-body 2: Small body for tests; unitary\n"
            "\n"
            "Centre line and singles, front to rear\n"
            "  zone  name     role  joined  build     sheet     area  rust starts\n"
            "  11    scuttle  skin  welded  single  0.90 mm  0.30 m²  below the screen\n"
            "\n"
            "Pairs, left and right\n"
            "  zone   name                 role  joined  build     sheet     area  rust starts\n"
            "  51 52  outer sill (rocker)  main  welded  single  1.00 mm  0.15 m²  bottom seam\n"
            "\n"
            "Stations, by zone: a finding of that name has its place\n"
            "  zone   stations\n"
            "  51 52  rear end\n"
            "\n"
            "Mounts (strict: metal near them is judged as theirs)\n"
            "  mount               carries     rule    stands on\n"
            "  rear spring hanger  suspension  strict  51\n"
            "  rear spring hanger  suspension  strict  52\n");
  const auto json = nlohmann::json::parse(
      workshop.run("bodies small-body --panels panels --format json").results);
  EXPECT_EQ(json["zones"].size(), 3u);
  EXPECT_EQ(json["zones"][0]["stations"], nlohmann::json::array());
  EXPECT_EQ(json["zones"][2]["stations"].dump(),
            R"([{"name":"rear end","x_mm":1450.0,"y_mm":690.0,"z_mm":200.0}])");
}

TEST(Bodies, DrawTheKeyOfOneTheSameEachTime) {
  const Workshop workshop;
  for (const char* ending : {"pdf", "svg", "png"}) {
    const std::string draw =
        fmt::format("bodies small-body --panels panels --page structure -o key.{}", ending);
    const std::string pdf = fmt::format("bodies small-body --panels panels -o key.{}", ending);
    const std::string command = std::string(ending) == "pdf" ? pdf : draw;
    const Ended first = workshop.run(command);
    EXPECT_EQ(first.status, 0) << first.messages;
    EXPECT_EQ(first.messages, fmt::format("wrote key.{}\n", ending));
    const std::string once = workshop.text(fmt::format("key.{}", ending));
    EXPECT_GT(once.size(), 1000u);
    workshop.run(command);
    EXPECT_EQ(workshop.text(fmt::format("key.{}", ending)), once);
  }
  const Ended none = workshop.run("bodies small-body --panels panels --page frame -o key.svg");
  EXPECT_EQ(none.status, 2);
  EXPECT_EQ(none.messages, "tinworm bodies: small-body has no frame sheet\n");
}

TEST(Map, DrawsEachKind) {
  const Workshop workshop;
  struct {
    std::string arguments, file, start;
  } const cases[] = {
      {"-o out.pdf", "out.pdf", "%PDF-"},
      {"-o out.svg", "out.svg", "<?xml"},
      {"-o out.png --page skin --width 800", "out.png", "\x89PNG"},
      {"-o pictures/ --as svg", "pictures/good.svg", "<?xml"},
      {"-o OUT.PDF --paper letter --circles", "OUT.PDF", "%PDF-"},
  };
  for (const auto& [arguments, file, start] : cases) {
    const Ended ended = workshop.run("map good.yaml --panels panels " + arguments);
    EXPECT_EQ(ended.status, 0) << arguments;
    EXPECT_EQ(ended.messages, "wrote " + file + "\n");
    EXPECT_TRUE(workshop.text(file).starts_with(start)) << arguments;
  }
  EXPECT_TRUE(workshop.run("map good.yaml --panels panels --as pdf -o -").results ==
              workshop.text("out.pdf"))
      << "the same bytes every time";
}

TEST(Schema, PrintsThatOfEachKindOfFile) {
  const Workshop workshop;
  for (const std::string kind : {"survey", "body", "rules"}) {
    const Ended ended = workshop.run("schema " + kind);
    EXPECT_EQ(ended.status, 0) << kind;
    EXPECT_EQ(ended.messages, "") << kind;
    const auto json = nlohmann::json::parse(ended.results);
    EXPECT_EQ(json["$schema"], "https://json-schema.org/draft/2020-12/schema") << kind;
    EXPECT_EQ(json["$id"], "urn:tinworm:" + kind + ":1");
  }
}

TEST(Map, SaysWhereABodyLacksASheet) {
  const Ended ended = Workshop().run("map good.yaml --panels panels -o out.svg --page frame");
  EXPECT_EQ(ended.status, 2);
  EXPECT_EQ(ended.messages, "tinworm map: good.yaml: small-body has no frame sheet\n");
}

TEST(Map, WritesManyIntoAFolder) {
  const Workshop workshop;
  const Ended ended = workshop.run("map good.yaml bad.yaml --panels panels -o pictures --quiet");
  EXPECT_EQ(ended.status, 1);
  EXPECT_TRUE(workshop.has("pictures/good.pdf"));
  EXPECT_FALSE(workshop.has("pictures/bad.pdf"));
}

TEST(Map, TakesItsDateFromTheSurveyOrTheEnvironment) {
  const Workshop workshop;
  const std::string draw = "map good.yaml --panels panels --as pdf -o -";
  const auto dated = [&](const std::string& before, const std::string& date) {
    return workshop.run(draw, before).results.find("/CreationDate (" + date) != std::string::npos;
  };
  EXPECT_TRUE(dated("true", "D:20250412000000Z"));
  EXPECT_TRUE(dated("export SOURCE_DATE_EPOCH=1000000000", "D:20010909014640Z"));
  for (const std::string zone : {"EAST-14", "WEST12", "UTC"}) {  // POSIX: hours to add for UTC
    EXPECT_TRUE(dated("export TZ=" + zone, "D:20250412000000Z")) << zone;
    EXPECT_TRUE(dated("export SOURCE_DATE_EPOCH=1000000000 TZ=" + zone, "D:20010909014640Z"))
        << zone;
  }
  EXPECT_EQ(workshop.run(draw, "export SOURCE_DATE_EPOCH=soon").messages,
            "tinworm map: SOURCE_DATE_EPOCH is seconds since 1970, not \"soon\"\n");
}

}  // namespace
}  // namespace tinworm::verbs
