// Files that a PDF carries (ISO 32000-1, 7.11.4: embedded file streams; ISO 32000-2, 14.13: the
// relationship "Source"). An owner keeps the paper, not the survey: so the paper has the survey in
// it, as it was typed. The only room that includes qpdf.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include <tl/expected.hpp>

namespace tinworm::attachments {

enum class Role { survey, plan, rules, rates };  // what the file is to the paper

struct Attachment {
  Role role = Role::survey;
  std::string name;  // of the file, without folders
  std::string bytes;
  bool operator==(const Attachment&) const = default;
};

// The same pages with the files in it; the same bytes for the same arguments. Throws
// std::runtime_error with qpdf's words where `pdf` is none.
std::string with_attachments(std::string_view pdf, const std::vector<Attachment>& attachments);

struct Refusal {
  std::string what;  // "isn't a PDF"
  std::string cure;
};

struct Carried {
  std::string keywords;  // of the PDF: how it was made
  std::vector<Attachment> attachments;
};

constexpr std::size_t most_attached_bytes = 1u << 20;  // of one file: a survey has no more

bool begins_like_pdf(std::string_view bytes);

// What the PDF at `path` carries. Anyone may have made it: only a file as with_attachments() leaves
// one is opened at all (one plain table of its objects, no encryption, no compressed objects), and
// no file in it is unpacked past most_attached_bytes. Nothing is thrown for what is in the file.
tl::expected<Carried, Refusal> carried_by(const std::string& path);

}  // namespace tinworm::attachments
