// The file by which a course knows a package: imsmanifest.xml of SCORM 1.2 (ADL, SCORM Content Aggregation Model 1.2, 2001;
// IMS Content Packaging 1.1.2) and cmi5.xml (cmi5, Quartz, 1st edition, section 13).

const entities = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;", "'": "&#39;" };

// What XML has no way to write is left out (XML 1.0, 2.2).
const unwritable = /[^\t\n\r\x20-\uD7FF\uE000-\uFFFD\u{10000}-\u{10FFFF}]/gu;

/** A text as XML and HTML hold it. */
export const escaped = (text) => text.replace(unwritable, "").replace(/[&<>"']/g, (c) => entities[c]);

const head = '<?xml version="1.0" encoding="UTF-8"?>\n';
const mostTitle = 200; // characters of a title in IMS Content Packaging

/** imsmanifest.xml for a set, { id, pass }, with its title and the names of the files. */
export const scormManifest = ({ id, pass }, { title, files }) => `${head}<manifest identifier="exercises-${id}" version="1"
    xmlns="http://www.imsproject.org/xsd/imscp_rootv1p1p2" xmlns:adlcp="http://www.adlnet.org/xsd/adlcp_rootv1p2">
  <metadata><schema>ADL SCORM</schema><schemaversion>1.2</schemaversion></metadata>
  <organizations default="course">
    <organization identifier="course">
      <title>${escaped([...title].slice(0, mostTitle).join(""))}</title>
      <item identifier="item" identifierref="exercises">
        <title>${escaped([...title].slice(0, mostTitle).join(""))}</title>${pass ? `
        <adlcp:masteryscore>${pass}</adlcp:masteryscore>` : ""}
      </item>
    </organization>
  </organizations>
  <resources>
    <resource identifier="exercises" type="webcontent" adlcp:scormtype="sco" href="index.html">
${files.map((name) => `      <file href="${name}"/>`).join("\n")}
    </resource>
  </resources>
</manifest>
`;

/** cmi5.xml for a set, { name, mastery }, with its title and a description, in a language. */
export function cmi5Manifest({ name, mastery }, { title, description, lang }) {
  const said = (text) => `<langstring lang="${lang}">${escaped(text)}</langstring>`;
  const words = (indent) => `${indent}<title>${said(title)}</title>\n${indent}<description>${said(description)}</description>`;
  return `${head}<courseStructure xmlns="https://w3id.org/xapi/profiles/cmi5/v1/CourseStructure.xsd">
  <course id="${name}">
${words("    ")}
  </course>
  <au id="${name}#exercises" launchMethod="AnyWindow" moveOn="${mastery ? "Passed" : "Completed"}"${mastery ? ` masteryScore="${mastery}"` : ""}>
${words("    ")}
    <url>index.html</url>
  </au>
</courseStructure>
`;
}
