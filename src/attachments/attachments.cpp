#include "attachments/attachments.hpp"

#define POINTERHOLDER_TRANSITION 4  // shared pointers are std::shared_ptr

#include <array>
#include <exception>
#include <optional>

#include <fmt/format.h>
#include <qpdf/Pl_String.hh>
#include <qpdf/QPDF.hh>
#include <qpdf/QPDFEmbeddedFileDocumentHelper.hh>
#include <qpdf/QPDFWriter.hh>

#include "attachments/plain_table.hpp"

namespace tinworm::attachments {
namespace {

// The file's description in the PDF, which viewers show; it tells the role again when it is read.
struct RoleText {
  Role role;
  const char* text;
};
constexpr std::array role_texts = {
    RoleText{Role::survey, "the survey, as typed"},
    RoleText{Role::plan, "the body plan it was made by"},
    RoleText{Role::rules, "the rules it was weighed by"},
    RoleText{Role::rates, "the rates it was reckoned by"},
};
static_assert(role_texts.size() == static_cast<std::size_t>(Role::rates) + 1);

constexpr std::size_t most_attachments = role_texts.size();

const char* text_of(Role role) {
  return role_texts[static_cast<std::size_t>(role)].text;
}

std::optional<Role> role_of(std::string_view text) {
  for (const RoleText& each : role_texts)
    if (each.text == text) return each.role;
  return std::nullopt;
}

// Takes what is unpacked, up to a bound.
class Bounded : public Pipeline {
 public:
  Bounded() : Pipeline("attached file", nullptr) {}
  void write(unsigned char const* bytes, std::size_t size) override {
    if (taken.size() + size > most_attached_bytes) {
      too_large = true;
      throw std::runtime_error("too large");
    }
    taken.append(reinterpret_cast<const char*>(bytes), size);
  }
  void finish() override {}

  std::string taken;
  bool too_large = false;
};

Refusal broken(const std::string& what) {
  return {what, "take the file as tinworm wrote it"};
}

// Plain or packed once, as with_attachments() has it: filters one over the other unpack to
// anything.
bool is_packed_once(QPDFObjectHandle stream) {
  QPDFObjectHandle dictionary = stream.getDict();
  QPDFObjectHandle filter = dictionary.getKey("/Filter");
  const bool plain = filter.isNull() || (filter.isName() && filter.getName() == "/FlateDecode");
  return plain && dictionary.getKey("/DecodeParms").isNull();
}

tl::expected<std::string, Refusal> unpacked(QPDFObjectHandle stream, const std::string& name) {
  if (!stream.isStream() || !is_packed_once(stream))
    return tl::unexpected(
        broken(fmt::format("carries {} in a form that tinworm never writes", name)));
  Bounded bounded;
  bool whole = false;
  try {
    whole = stream.pipeStreamData(&bounded, 0, qpdf_dl_generalized, true);
  } catch (const std::exception&) {
    whole = false;  // told below
  }
  if (bounded.too_large)
    return tl::unexpected(
        broken(fmt::format("carries more than {1} MiB as {0}", name, most_attached_bytes >> 20)));
  if (!whole) return tl::unexpected(broken(fmt::format("carries {}, but it is broken", name)));
  return std::move(bounded.taken);
}

tl::expected<Carried, Refusal> carried_in(QPDF& pdf) {
  Carried carried;
  QPDFObjectHandle info = pdf.getTrailer().getKey("/Info");
  if (info.isDictionary()) {
    QPDFObjectHandle keywords = info.getKey("/Keywords");
    if (keywords.isString()) carried.keywords = keywords.getUTF8Value();
  }
  QPDFEmbeddedFileDocumentHelper embedded(pdf);
  const auto files = embedded.getEmbeddedFiles();
  for (const auto& [key, file] : files) {
    const std::optional<Role> role = role_of(file->getDescription());
    if (!role) continue;  // somebody else's
    if (carried.attachments.size() == most_attachments)
      return tl::unexpected(broken("carries more files than tinworm ever writes"));
    std::string name = file->getFilename();
    auto bytes = unpacked(file->getEmbeddedFileStream(), std::string(text_of(*role)));
    if (!bytes) return tl::unexpected(bytes.error());
    carried.attachments.push_back({*role, std::move(name), std::move(*bytes)});
  }
  return carried;
}

void add(QPDF& pdf, const Attachment& attachment) {
  auto stream = QPDFEFStreamObjectHelper::createEFStream(pdf, attachment.bytes);
  stream.setSubtype("application/yaml");  // RFC 9512
  auto file = QPDFFileSpecObjectHelper::createFileSpec(pdf, attachment.name, stream);
  file.setDescription(text_of(attachment.role));
  QPDFObjectHandle object = file.getObjectHandle();
  object.replaceKey("/AFRelationship", QPDFObjectHandle::newName("/Source"));
  // Two files may have one name; in the order of their roles, the survey first.
  const std::string key =
      fmt::format("{} {}", static_cast<int>(attachment.role) + 1, attachment.name);
  QPDFEmbeddedFileDocumentHelper(pdf).replaceEmbeddedFile(key, file);
  QPDFObjectHandle root = pdf.getRoot();
  if (!root.hasKey("/AF")) root.replaceKey("/AF", QPDFObjectHandle::newArray());
  root.getKey("/AF").appendItem(object);
}

}  // namespace

bool begins_like_pdf(std::string_view bytes) {
  return bytes.starts_with("%PDF-");
}

std::string with_attachments(std::string_view pdf, const std::vector<Attachment>& attachments) {
  QPDF file;
  file.setSuppressWarnings(true);
  file.processMemoryFile("the paper", pdf.data(), pdf.size());
  for (const Attachment& each : attachments) add(file, each);
  std::string bytes;
  Pl_String out("the paper", nullptr, bytes);
  QPDFWriter writer(file);
  writer.setOutputPipeline(&out);
  writer.setDeterministicID(true);
  writer.setObjectStreamMode(qpdf_o_disable);  // a plain table: see carried_by()
  writer.write();
  return bytes;
}

tl::expected<Carried, Refusal> carried_by(const std::string& path) {
  if (const auto plain = has_plain_table(path); !plain) return tl::unexpected(plain.error());
  try {
    QPDF pdf;
    pdf.setSuppressWarnings(true);
    pdf.setAttemptRecovery(false);
    pdf.processFile(path.c_str());
    auto carried = carried_in(pdf);
    if (carried && pdf.anyWarnings()) return tl::unexpected(broken("is broken inside"));
    return carried;
  } catch (const std::exception&) {
    // qpdf's words speak of objects and offsets, and of what a stranger wrote.
    return tl::unexpected(broken("is broken inside"));
  }
}

}  // namespace tinworm::attachments
